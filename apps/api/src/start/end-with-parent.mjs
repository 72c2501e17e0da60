// Loaded into a program of somebody else's, so that it ends when the starter does, however that ends.
process.once('disconnect', () => process.exit());
