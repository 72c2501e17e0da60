import { fieldText, type Item, type ItemLeaves, leavesOf } from '@flangewise/model';
import { hintOf, layoutOf, type LayoutSection, pathAt } from './item-layout';

const shown = (leaves: ItemLeaves, path: string): string | undefined => {
  const leaf = leaves.get(path);
  return leaf === undefined ? undefined : fieldText(leaf.field, leaf.value);
};

/** How many of several there are. */
const countOf = (leaves: ItemLeaves, path: string): number =>
  [...leaves.keys()].reduce((most, one) => {
    const index = one.startsWith(`${path}[`) ? Number(/\[(\d+)\]/.exec(one)?.[1] ?? -1) : -1;
    return Math.max(most, index + 1);
  }, 0);

function Several({ section, leaves }: { readonly section: LayoutSection; readonly leaves: ItemLeaves }) {
  const count = countOf(leaves, section.path);
  if (count === 0) return <p className="text-ink2">none</p>;
  return (
    <div className="overflow-x-auto" tabIndex={0} role="group" aria-label={`${section.title}, table`}>
      <table className="tab">
        <thead>
          <tr>
            {section.fields.map(({ path, label }) => (
              <th key={path} scope="col">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: count }, (_, i) => (
            <tr key={i}>
              {section.fields.map(({ path }) => (
                <td key={path} className="whitespace-nowrap">
                  {shown(leaves, pathAt(path, i)) ?? '–'}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Values({ section, leaves }: { readonly section: LayoutSection; readonly leaves: ItemLeaves }) {
  const written = section.fields.flatMap(({ path, label, field }) => {
    const text = shown(leaves, path);
    return text === undefined ? [] : [{ path, label, text, description: hintOf({ label, field }) }];
  });
  if (written.length === 0) return <p className="text-ink2">none</p>;
  return (
    <dl>
      {written.map(({ path, label, text, description }) => (
        <div key={path} className="row grid gap-x-4 py-1.5 sm:grid-cols-[200px_minmax(0,1fr)]">
          <dt className="text-ink2">{label}</dt>
          <dd className="min-w-0 break-words">
            <span className="font-medium">{text}</span>
            {description !== undefined && <span className="lab block">{description}</span>}
          </dd>
        </div>
      ))}
    </dl>
  );
}

/** Everything that the range says of an item, in the units in which people read it. */
export function ItemView({ item }: { readonly item: Item }) {
  const leaves = leavesOf(item);
  return (
    <div className="grid grid-cols-1 gap-5">
      {layoutOf(item.slot).map((section) => (
        <section key={section.path} className="sec">
          <h3 className="mb-1">{section.title}</h3>
          {section.isSeveral ? (
            <Several section={section} leaves={leaves} />
          ) : (
            <Values section={section} leaves={leaves} />
          )}
        </section>
      ))}
    </div>
  );
}
