import { rulePages, ruleRevision } from '@flangewise/constraints/rule-pages';
import type { RuleBook } from './use-rule-book';

/** Works the book of rules out away from the page, and is done. */
const book: RuleBook = { revision: ruleRevision, pages: rulePages() };
postMessage(book);
