/** The law that applies follows from the country; where nobody named one, the European Union is assumed. */
export const isBritish = (country: string | undefined): boolean =>
  /britain|kingdom|england|scotland|wales|^uk$|^gb$/.test((country ?? '').trim().toLowerCase());

export const isAmerican = (country: string | undefined): boolean =>
  /united states|^usa?$|america/.test((country ?? '').trim().toLowerCase());

/** Neither Great Britain nor the United States. Countries outside the Union often take its law over; the site says. */
export const isEuropean = (country: string | undefined): boolean =>
  !isBritish(country) && !isAmerican(country);
