import type { Metadata, Viewport } from 'next';
import type { ReactNode } from 'react';
import '@fontsource-variable/archivo/wdth.css';
import '@fontsource-variable/source-serif-4/wght.css';
import '@fontsource-variable/source-serif-4/wght-italic.css';
import './globals.css';
import { QueryProvider } from '../api/query-provider';
import { themeScript } from '../shell/theme';

export const metadata: Metadata = {
  title: { default: 'Flangewise', template: '%s · Flangewise' },
  description: 'From the inquiry for a stirred pressure reactor to the proved offer',
};

export const viewport: Viewport = { width: 'device-width', initialScale: 1 };

export default function Layout({ children }: { readonly children: ReactNode }) {
  return (
    <html lang="en" data-theme="light" suppressHydrationWarning>
      <head>
        <script dangerouslySetInnerHTML={{ __html: themeScript }} />
      </head>
      <body>
        <QueryProvider>{children}</QueryProvider>
      </body>
    </html>
  );
}
