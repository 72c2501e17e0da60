import { rulePages, ruleRevision } from '@flangewise/constraints/rule-pages';
import { renderRuleBook, ruleBookViewOf } from '@flangewise/documents';

/** The rules in force as a PDF, under the name of their maker. */
export const renderRules = async (maker: string): Promise<Uint8Array> =>
  renderRuleBook(ruleBookViewOf({ maker, revision: ruleRevision, pages: rulePages() }));
