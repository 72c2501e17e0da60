'use client';

import { fieldInWords } from '@flangewise/constraints';
import type { RuleResult, SystemInput } from '@flangewise/model';
import type { EngineClient } from '../engine/engine-client';
import { CheckBar } from '../look/check-bar';
import { Drawer } from '../look/drawer';
import { StatusMark, statusClass } from '../look/status-mark';
import Link from 'next/link';
import { useMe } from '../api/use-me';
import { Working } from '../look/working';
import { ruleHref } from '../rules/rule-href';
import type { CheckGroup } from './check-groups';
import { EvidenceView, Sources } from './evidence-view';
import { useAnswer } from './use-view';

const isSame = (a: RuleResult, b: RuleResult): boolean =>
  a.rule === b.rule && a.set === b.set && a.slots.join() === b.slots.join();

export interface EvidenceDrawerProps {
  readonly group: CheckGroup;
  readonly document: SystemInput;
  readonly client: EngineClient;
  readonly onClose: () => void;
}

/** What a check demands, what the part gives, and how that was found. */
export function EvidenceDrawer({ group, document, client, onClose }: EvidenceDrawerProps) {
  const { result, row, texts } = group;
  const me = useMe();
  const proof = useAnswer(`${group.key} ${JSON.stringify(document)}`, (signal) =>
    client.ask('prove', { document }, signal),
  );
  const proved = proof?.ok === true ? proof.value.results.find((one) => isSame(one, result)) : undefined;
  return (
    <Drawer title={result.title} onClose={onClose}>
      <p className="mt-1 flex items-center gap-2">
        <StatusMark status={result.status} />
        <b className={`font-semibold ${statusClass(result.status)}`}>{result.status}</b>
        {row.demand !== '' && row.limit !== '' && (
          <span>
            {row.demand} of {row.limit}
          </span>
        )}
        {row.margin !== '' && <span className="text-ink2">margin {row.margin}</span>}
      </p>
      {result.utilisation !== undefined && (
        <div className="mt-3">
          <CheckBar status={result.status} utilisation={result.utilisation} width={420} height={20} />
        </div>
      )}
      <div className="mt-4 grid gap-1.5">
        {texts.map((text) => (
          <p key={text} className="say first-letter:uppercase">
            {text}
          </p>
        ))}
      </div>
      {result.missing.length > 0 && (
        <p className="lab mt-2">Missing: {result.missing.map(fieldInWords).join('; ')}.</p>
      )}
      {me !== undefined && me.role !== 'customer' && (
        <p className="mt-3">
          <Link href={ruleHref(result.rule)}>The rule: what it reads, how it decides, what it rests on</Link>
        </p>
      )}
      {proof === undefined && <Working text="Working out the steps." />}
      {proved !== undefined && <Sources sources={proved.source} />}
      {proved?.evidence.map((evidence, i) => (
        <EvidenceView key={`${evidence.calculation} ${String(i)}`} evidence={evidence} />
      ))}
      {proved !== undefined && proved.evidence.length === 0 && (
        <p className="lab mt-4">
          Nothing is calculated here: the values of the parts are compared with those of the inquiry.
        </p>
      )}
      <p className="lab mt-6">
        This check supports, and does not replace, the work of a qualified pressure-equipment engineer, the
        notified body and local rules.
      </p>
    </Drawer>
  );
}
