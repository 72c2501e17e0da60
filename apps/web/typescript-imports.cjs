// The libraries import each other's files as TypeScript wants it, by the name of the compiled file (`./x.js` for `x.ts`).
// The bundler looks for the file of that very name; without the ending it finds the source.
const relative = /(\b(?:from|import)\s*\(?\s*)(['"])(\.{1,2}\/[^'"]+)\.js\2/g;

module.exports = (source) => source.replace(relative, '$1$2$3$2');
