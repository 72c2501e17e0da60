'use client';

import { parseSlotPath, type SlotPath, slots, type SystemInput } from '@flangewise/model';
import { timeText } from '../figures/moment';
import { Question } from '../look/drawer';
import { choiceIn } from './edit-system';
import { differingSlots, type Theirs } from './theirs';

export interface OtherChangedProps {
  readonly mine: SystemInput;
  readonly theirs: Theirs;
  readonly nameOf: (id: string | null | undefined) => string;
  readonly onKeepMine: () => void;
  readonly onTakeTheirs: () => void;
}

const titleOf = (path: SlotPath): string => {
  const parsed = parseSlotPath(path);
  if (parsed === undefined) return path;
  const title = slots[parsed.slot].title;
  return parsed.set === undefined || parsed.set === 0 ? title : `${title}, set ${String(parsed.set + 1)}`;
};

/** Somebody else saved meanwhile: what differs, and whose stands. */
export function OtherChanged({ mine, theirs, nameOf, onKeepMine, onTakeTheirs }: OtherChangedProps) {
  const paths = differingSlots(mine, theirs.document);
  return (
    <Question title="Someone else changed it">
      <p className="say mt-2">
        {theirs.by} saved this system at {timeText(theirs.at)}, after you opened it.{' '}
        {paths.length === 0 ? 'The choices are the same; what the client asked for differs.' : ''}
      </p>
      {paths.length > 0 && (
        <table className="tab mt-3">
          <thead>
            <tr>
              <th scope="col">Slot</th>
              <th scope="col">Yours</th>
              <th scope="col">Theirs</th>
            </tr>
          </thead>
          <tbody>
            {paths.map((path) => (
              <tr key={path}>
                <th scope="row" className="text-[13px]! text-ink!">
                  {titleOf(path)}
                </th>
                <td>{nameOf(choiceIn(mine, path))}</td>
                <td>{nameOf(choiceIn(theirs.document, path))}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p className="mt-4 flex gap-2">
        <button type="button" className="btn" onClick={onKeepMine}>
          Keep mine
        </button>
        <button type="button" className="btn" onClick={onTakeTheirs}>
          Take theirs
        </button>
      </p>
    </Question>
  );
}
