/** Where the page of a rule stands. */
export const ruleHref = (id: string): string => `/rules/${id}`;
