'use client';

import * as Dialog from '@radix-ui/react-dialog';
import type { ReactNode } from 'react';

export interface DrawerProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** Content beside the page, at its right edge. */
export function Drawer({ title, onClose, children }: DrawerProps) {
  return (
    <Dialog.Root open onOpenChange={(open) => !open && onClose()}>
      <Dialog.Portal>
        <Dialog.Overlay className="fixed inset-0 z-40 bg-ink/20" />
        <Dialog.Content
          aria-describedby={undefined}
          className="fixed inset-y-0 right-0 z-50 w-[min(640px,100vw)] overflow-y-auto border-l border-rule bg-sheet px-6 py-5"
        >
          <div className="flex items-start justify-between gap-4">
            <Dialog.Title asChild>
              <h2 className="text-heading!">{title}</h2>
            </Dialog.Title>
            <Dialog.Close className="btn">Close</Dialog.Close>
          </div>
          {children}
        </Dialog.Content>
      </Dialog.Portal>
    </Dialog.Root>
  );
}

/** A question that has to be answered before the work goes on. */
export function Question({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <Dialog.Root open>
      <Dialog.Portal>
        <Dialog.Overlay className="fixed inset-0 z-40 bg-ink/20" />
        <Dialog.Content
          aria-describedby={undefined}
          onEscapeKeyDown={(event) => event.preventDefault()}
          onPointerDownOutside={(event) => event.preventDefault()}
          className="pane fixed top-[12vh] left-1/2 z-50 max-h-[76vh] w-[min(520px,calc(100vw-32px))] -translate-x-1/2 overflow-y-auto px-6 py-5"
        >
          <Dialog.Title asChild>
            <h2 className="text-heading!">{title}</h2>
          </Dialog.Title>
          {children}
        </Dialog.Content>
      </Dialog.Portal>
    </Dialog.Root>
  );
}
