'use client';

import * as Menu from '@radix-ui/react-dropdown-menu';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { signOut } from '../api/sign-in';
import { useMe } from '../api/use-me';
import { chooseTheme, readTheme, type Theme, themes } from './theme';

const themeTitles: Readonly<Record<Theme, string>> = {
  light: 'Light',
  dark: 'Dark',
  system: 'As this computer',
};

const entry =
  'flex min-h-8 cursor-pointer items-center gap-2 px-3 outline-none data-[highlighted]:bg-given-t';

/** Who is signed in, what they are, how the pages look, and the way out. */
export function PersonMenu() {
  const me = useMe();
  const queries = useQueryClient();
  const [theme, setTheme] = useState<Theme>('system');
  if (me === undefined) return null;
  const leave = async (): Promise<void> => {
    await signOut();
    queries.clear();
    location.assign('/sign-in');
  };
  const initials = me.name
    .split(' ')
    .map((word) => word[0])
    .join('');
  return (
    <Menu.Root modal={false} onOpenChange={(open) => open && setTheme(readTheme())}>
      <Menu.Trigger className="btn btn-q">
        <span className="max-xl:sr-only">{me.name}</span>
        <span className="xl:hidden" aria-hidden="true">
          {initials}
        </span>
        <span className="sr-only">: account and appearance</span>
      </Menu.Trigger>
      <Menu.Portal>
        <Menu.Content align="end" sideOffset={8} className="pane z-50 min-w-56 pt-2">
          <Menu.Label className="px-3 pb-2">
            <span className="block font-semibold">{me.name}</span>
            <span className="lab">{me.client?.name ?? me.roleTitle}</span>
          </Menu.Label>
          <Menu.RadioGroup
            className="border-t border-hair py-1"
            value={theme}
            onValueChange={(value) => {
              const chosen = themes.find((one) => one === value) ?? 'system';
              setTheme(chosen);
              chooseTheme(chosen);
            }}
          >
            {themes.map((one) => (
              <Menu.RadioItem key={one} value={one} className={entry} onSelect={(e) => e.preventDefault()}>
                <span className="w-3">
                  <Menu.ItemIndicator>
                    <svg width="8" height="8" aria-hidden="true">
                      <circle cx="4" cy="4" r="4" fill="currentColor" />
                    </svg>
                  </Menu.ItemIndicator>
                </span>
                {themeTitles[one]}
              </Menu.RadioItem>
            ))}
          </Menu.RadioGroup>
          <Menu.Item className={`${entry} border-t border-hair`} onSelect={() => void leave()}>
            Sign out
          </Menu.Item>
        </Menu.Content>
      </Menu.Portal>
    </Menu.Root>
  );
}
