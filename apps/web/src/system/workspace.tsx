'use client';

import { inquirySchema, parseSlotPath, readDocument } from '@flangewise/model';
import { useQueryClient } from '@tanstack/react-query';
import { useCallback, useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import type { InquiryRecord } from '../api/use-inquiry';
import type { Me } from '../api/use-me';
import { ConditionStrip } from '../conditions/condition-strip';
import { conditionsOfInquiry } from '../conditions/conditions-of-inquiry';
import { useScenes } from '../drawing/use-scenes';
import type { Engine } from '../engine/use-engine';
import { errorText } from '../api/api-error';
import { whyNotChange } from '../api/why-not-change';
import { type Job, Page } from '../shell/page';
import type { SheetLinks } from '../shell/sheets';
import type { CheckGroup } from './check-groups';
import { Cautions } from './cautions';
import { CheckList } from './check-list';
import { CompleteButton } from './complete-button';
import { ConflictPanel } from './conflict-panel';
import { DrawingSheet, type SheetView } from './drawing-sheet';
import { EvidenceDrawer } from './evidence-drawer';
import { OtherChanged } from './other-changed';
import { NextStep, NotSavedHere, type Standing } from './next-step';
import { SaveTrouble } from './save-state-text';
import { arrangementText, setNamesOf } from './set-names';
import { SetTabs } from './set-tabs';
import { SlotPanel } from './slot-panel';
import { slotRowsOf } from './slot-rows';
import { SystemTitle } from './system-title';
import { useSelectedSlot } from './use-selected-slot';
import { useKeep } from './use-keep';
import { type OpenedSystem, useSystem } from './use-system';
import { Verdict } from './verdict';
import { useView } from './use-view';
import type { Workbench } from './workbench';

export interface WorkspaceProps {
  readonly me: Me;
  readonly system: OpenedSystem;
  readonly inquiry: InquiryRecord;
  readonly job: Job | undefined;
  readonly links: SheetLinks | undefined;
  readonly engine: Engine;
}

/** Ctrl or Cmd with Z and Y, outside of text fields. */
function useUndoKeys(undo: (() => void) | undefined, redo: (() => void) | undefined): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      if (event.target instanceof HTMLInputElement && event.target.type === 'text') return;
      const key = event.key.toLowerCase();
      const run = key === 'y' || (key === 'z' && event.shiftKey) ? redo : key === 'z' ? undo : undefined;
      if (run === undefined) return;
      event.preventDefault();
      run();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, [undo, redo]);
}

/** The offer of a system; who drafts offers is led to a new one where there is none. */
const offerOf = (
  { id }: OpenedSystem,
  { links, drafts }: { readonly links: SheetLinks | undefined; readonly drafts: boolean },
): Standing['offer'] => {
  if (id === undefined) return undefined;
  const href = links?.Offer ?? `/systems/${id}/offer`;
  if (href.startsWith('/offers/')) return { href, title: 'Open offer' };
  return drafts ? { href, title: 'Draft offer' } : undefined;
};

/** The drawing as the form: choose a slot, see what fits, what it costs and what proves it. */
export function Workspace({ me, system, inquiry, job, links, engine }: WorkspaceProps) {
  const whyNot = whyNotChange(me, inquiry);
  const isEngineer = me.role === 'applications_engineer';
  const saves = whyNot === undefined && system.id !== undefined;
  const { document, change, undo, redo, replace, saving } = useSystem(system, saves);
  const keeping = useKeep(inquiry.id, document);
  const { view, narrowed, isCurrent, fault } = useView(engine.client, document);
  const [selected, select] = useSelectedSlot();
  const [set, setSet] = useState(0);
  const [sheetView, setSheetView] = useState<SheetView>('drawing');
  const [opened, setOpened] = useState<CheckGroup>();
  const queries = useQueryClient();
  const reading = useRef<HTMLElement>(null);
  useUndoKeys(undo, redo);

  const selectedSet = selected === undefined ? undefined : parseSlotPath(selected)?.set;
  useEffect(() => {
    if (selectedSet !== undefined) setSet(selectedSet);
  }, [selectedSet]);
  useEffect(() => {
    if (saving.state.kind === 'saved') void queries.invalidateQueries({ queryKey: ['inquiry', inquiry.id] });
  }, [saving.state, queries, inquiry.id]);

  // What fits and what holds is said at once; the drawing follows as soon as there is time for it.
  const scenes = useScenes(useDeferredValue(view?.drawing), set);
  const sets = document.sets ?? [];
  const setNames = setNamesOf(sets);
  const rows = useMemo(
    () =>
      slotRowsOf({
        document,
        assessment: view?.assessment,
        narrowed: isCurrent ? narrowed : undefined,
        numbers: scenes.numbers,
      }).filter((row) => row.set === undefined || row.set === set),
    [document, view, narrowed, isCurrent, scenes.numbers, set],
  );
  const names = useMemo(() => new Map(engine.items.map(({ id, name }) => [id, name])), [engine.items]);
  const nameOf = useCallback(
    (id: string | null | undefined): string =>
      id === undefined ? 'open' : id === null ? 'none' : (names.get(id) ?? view?.specials[id] ?? id),
    [names, view?.specials],
  );
  const read = useMemo(() => readDocument(inquirySchema, document.inquiry), [document.inquiry]);
  const bench: Workbench = {
    document,
    client: engine.client,
    assessment: view?.assessment,
    narrowed,
    commercial: view?.commercial,
    isCurrent,
    currency: engine.currency,
    numbers: scenes.numbers,
    change,
    nameOf,
  };
  const row =
    rows.find(({ path }) => path === selected) ?? rows.find(({ status }) => status === 'not met') ?? rows[0];
  const choose = (path: Parameters<typeof select>[0]): void => {
    select(path);
    // On a narrow screen the options stand below the drawing.
    if (matchMedia('(max-width: 1023px)').matches)
      reading.current?.scrollIntoView({ block: 'start', behavior: 'auto' });
  };

  const standing: Standing = {
    systemId: system.id,
    whyNot,
    state: saving.state,
    onKeep: keeping.isPending ? undefined : () => keeping.mutate(document),
    offer: offerOf(system, { links, drafts: isEngineer }),
  };

  return (
    <Page
      title={`System ${system.name}`}
      sheet="System"
      links={links}
      job={job}
      actions={
        <>
          <button
            type="button"
            className="btn btn-q max-sm:hidden"
            disabled={undo === undefined}
            onClick={undo}
          >
            Undo
          </button>
          <button
            type="button"
            className="btn btn-q max-sm:hidden"
            disabled={redo === undefined}
            onClick={redo}
          >
            Redo
          </button>
          <span className="flex items-center gap-2 max-sm:hidden">
            <NextStep standing={standing} />
          </span>
        </>
      }
    >
      <SaveTrouble state={saving.state} onRetry={() => void saving.save()} />
      {keeping.isError && (
        <SaveTrouble
          state={{ kind: 'refused', message: errorText(keeping.error) }}
          onRetry={() => keeping.mutate(document)}
        />
      )}
      <NotSavedHere {...standing} />
      {read.ok && (
        <ConditionStrip
          conditions={conditionsOfInquiry(read.value, view?.assessment.results ?? [], set)}
          href={`/inquiries/${inquiry.id}`}
        />
      )}
      <main
        id="main"
        className="mx-auto grid max-w-[1440px] gap-6 px-4 py-4 max-sm:px-0 lg:px-6 xl:grid-cols-[minmax(0,912px)_minmax(0,1fr)]"
      >
        <div className="min-w-0 self-start xl:[@media(min-height:1500px)]:sticky xl:[@media(min-height:1500px)]:top-4">
          {view !== undefined && (
            <div className="sm:hidden">
              <Verdict assessment={view.assessment} />
            </div>
          )}
          <DrawingSheet
            scenes={scenes}
            rows={rows}
            selected={row?.path}
            onSelect={choose}
            nameOf={nameOf}
            view={sheetView}
            onView={setSheetView}
            tabs={
              setNames.length > 1 && (
                <SetTabs
                  names={setNames}
                  current={set}
                  onChange={setSet}
                  note={arrangementText(document.inquiry.arrangement)}
                />
              )
            }
            titleBlock={
              <SystemTitle
                bench={bench}
                system={system}
                priceListId={engine.priceListId}
                mayFreeze={isEngineer && saves}
                saved={saving.state.kind === 'saved'}
              />
            }
          />
        </div>
        <section
          ref={reading}
          aria-label="Chosen slot and checks"
          className="grid min-w-0 scroll-mt-4 content-start gap-6 max-sm:px-4 max-xl:md:grid-cols-2"
        >
          <div className="min-w-0">
            {fault !== undefined && <p role="alert">{fault}</p>}
            {isCurrent && narrowed?.consistent === false && <ConflictPanel bench={bench} />}
            {view !== undefined && view.assessment.undecided.length > 0 && <CompleteButton bench={bench} />}
            {row !== undefined && <SlotPanel key={row.path} bench={bench} row={row} />}
          </div>
          {view !== undefined && (
            <div className="grid min-w-0 content-start gap-6">
              <CheckList
                assessment={view.assessment}
                numbers={scenes.numbers}
                setNames={setNames}
                onOpen={setOpened}
              />
              <Cautions texts={view.assessment.cautions} />
            </div>
          )}
        </section>
      </main>
      <footer className="sticky bottom-0 z-30 flex items-center gap-2 border-t border-rule bg-sheet px-4 py-2 sm:hidden">
        <button type="button" className="btn btn-q" disabled={undo === undefined} onClick={undo}>
          Undo
        </button>
        <button type="button" className="btn btn-q" disabled={redo === undefined} onClick={redo}>
          Redo
        </button>
        <span className="grow" />
        <NextStep standing={standing} />
      </footer>
      {opened !== undefined && (
        <EvidenceDrawer
          group={opened}
          document={document}
          client={engine.client}
          onClose={() => setOpened(undefined)}
        />
      )}
      {saving.state.kind === 'other' && (
        <OtherChanged
          mine={document}
          theirs={saving.state.theirs}
          nameOf={nameOf}
          onKeepMine={() => {
            if (saving.state.kind === 'other') saving.keepMine(saving.state.theirs);
          }}
          onTakeTheirs={() => {
            if (saving.state.kind !== 'other') return;
            saving.takeTheirs(saving.state.theirs);
            replace(saving.state.theirs.document);
          }}
        />
      )}
    </Page>
  );
}
