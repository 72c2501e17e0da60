import revision from './data/revision.json' with { type: 'json' };

/** Names the content of the demo range: month and digest of all items and prices. A test holds it against them. */
export const catalogueRevision: string = revision.revision;
