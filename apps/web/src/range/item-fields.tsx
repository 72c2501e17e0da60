import { allowedText, type ItemField } from '@flangewise/model';
import { useId } from 'react';
import { Refused } from '../look/notice';
import { hintOf } from './item-layout';
import type { ItemTexts } from './item-texts';

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export interface FormFields {
  readonly texts: ItemTexts;
  /** What is wrong, by path, where it is to be said. */
  readonly troubles: Readonly<Record<string, string>>;
  readonly onText: (path: string, text: string) => void;
  readonly isNew: boolean;
}

const isList = ({ form }: ItemField): boolean => form === 'texts' || form === 'numbers';

const choicesOf = (field: ItemField): readonly string[] =>
  field.form === 'yes or no' ? ['yes', 'no'] : field.choices;

export interface ItemInputProps {
  readonly path: string;
  readonly label: string;
  readonly field: ItemField;
  readonly form: FormFields;
  /** Where a table's head says the label already. */
  readonly isCell?: boolean;
}

/** One field of an item, with what may be written in it. */
export function ItemInput({ path, label, field, form, isCell = false }: ItemInputProps) {
  const id = useId();
  const text = form.texts[path] ?? '';
  const trouble = form.troubles[path];
  const unit = field.unit === undefined ? '' : `, ${field.unit.label}`;
  const attributes = {
    id,
    className: 'field',
    name: path,
    'aria-label': isCell ? `${label}${unit}` : undefined,
    'aria-invalid': trouble === undefined ? undefined : true,
    'aria-describedby': trouble === undefined ? `${id}-hint` : `${id}-trouble`,
  };
  const isChoice = field.form === 'yes or no' || (field.choices.length > 0 && !isList(field));
  return (
    <div className="min-w-0">
      {!isCell && (
        <label htmlFor={id} className="lab mb-1 block">
          {label}
          {unit}
        </label>
      )}
      {isChoice ? (
        <select {...attributes} value={text} onChange={({ target }) => form.onText(path, target.value)}>
          <option value="">not said</option>
          {choicesOf(field).map((choice) => (
            <option key={choice}>{choice}</option>
          ))}
        </select>
      ) : (
        <input
          {...attributes}
          autoComplete="off"
          readOnly={path === 'id' && !form.isNew}
          value={text}
          onChange={({ target }) => form.onText(path, target.value)}
        />
      )}
      {!isCell && (
        <span id={`${id}-hint`} className="lab mt-0.5 block">
          {hintOf({ label, field }) ?? allowedText(field)}
        </span>
      )}
      {trouble !== undefined && <Refused id={`${id}-trouble`} text={sentence(trouble)} />}
    </div>
  );
}
