/** `site.ceilingHeight` is the ceiling height; what is not a field stands in words already. */
export const fieldInWords = (missing: string): string =>
  /^[a-zA-Z]+(?:\[\d+\])?(?:\.[a-zA-Z]+)+$/u.test(missing)
    ? missing.slice(missing.lastIndexOf('.') + 1).replace(/[A-Z]/gu, (letter) => ` ${letter.toLowerCase()}`)
    : missing;
