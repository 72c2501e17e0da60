/** What a person may choose; `system` follows the computer. */
export const themes = ['light', 'dark', 'system'] as const;
export type Theme = (typeof themes)[number];

const key = 'flangewise.theme';

const isTheme = (value: unknown): value is Theme => themes.some((theme) => theme === value);

export const readTheme = (): Theme => {
  const stored = globalThis.localStorage?.getItem(key);
  return isTheme(stored) ? stored : 'system';
};

export function applyTheme(theme: Theme): void {
  const dark = theme === 'dark' || (theme === 'system' && matchMedia('(prefers-color-scheme: dark)').matches);
  document.documentElement.dataset['theme'] = dark ? 'dark' : 'light';
}

export function chooseTheme(theme: Theme): void {
  localStorage.setItem(key, theme);
  applyTheme(theme);
}

/** Runs in the head, before anything is painted, so that no page flashes in the other theme. */
export const themeScript = `try{var t=localStorage.getItem('${key}');document.documentElement.dataset.theme=t==='dark'||(t!=='light'&&matchMedia('(prefers-color-scheme: dark)').matches)?'dark':'light'}catch{}`;
