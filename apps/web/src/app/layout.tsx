import type { Metadata } from 'next';
import type { ReactNode } from 'react';
import '@fontsource-variable/archivo/wdth.css';
import '@fontsource-variable/source-serif-4/wght.css';
import '@fontsource-variable/source-serif-4/wght-italic.css';
import './globals.css';

export const metadata: Metadata = {
  title: 'Flangewise',
  description: 'From the inquiry for a stirred pressure reactor to the proved offer',
};

export default function Layout({ children }: { readonly children: ReactNode }) {
  return (
    <html lang="en">
      <body>{children}</body>
    </html>
  );
}
