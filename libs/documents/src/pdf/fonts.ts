import { createRequire } from 'node:module';
import { Font } from '@react-pdf/renderer';

const require = createRequire(import.meta.url);

const archivo = (file: string): string => require.resolve(`@expo-google-fonts/archivo/${file}.ttf`);
const serif = (file: string): string => require.resolve(`@expo-google-fonts/source-serif-4/${file}.ttf`);

let registered = false;

/** Weights that are painted on drawings and title blocks, where nothing loads them by itself. */
const painted = [400, 600, 800] as const;

/** Static instances of Archivo and Source Serif 4 (both OFL-1.1), embedded in every document. */
export const loadFonts = async (): Promise<void> => {
  register();
  await Promise.all(painted.map((fontWeight) => Font.load({ fontFamily: 'Archivo', fontWeight })));
};

const register = (): void => {
  if (registered) return;
  registered = true;
  Font.register({
    family: 'Archivo',
    fonts: [
      { src: archivo('400Regular/Archivo_400Regular'), fontWeight: 400 },
      { src: archivo('400Regular_Italic/Archivo_400Regular_Italic'), fontWeight: 400, fontStyle: 'italic' },
      { src: archivo('500Medium/Archivo_500Medium'), fontWeight: 500 },
      { src: archivo('600SemiBold/Archivo_600SemiBold'), fontWeight: 600 },
      { src: archivo('800ExtraBold/Archivo_800ExtraBold'), fontWeight: 800 },
    ],
  });
  Font.register({
    family: 'Source Serif 4',
    fonts: [
      { src: serif('400Regular/SourceSerif4_400Regular'), fontWeight: 400 },
      { src: serif('500Medium/SourceSerif4_500Medium'), fontWeight: 500 },
      { src: serif('600SemiBold/SourceSerif4_600SemiBold'), fontWeight: 600 },
      { src: serif('800ExtraBold/SourceSerif4_800ExtraBold'), fontWeight: 800 },
      {
        src: serif('400Regular_Italic/SourceSerif4_400Regular_Italic'),
        fontWeight: 400,
        fontStyle: 'italic',
      },
    ],
  });
  Font.registerHyphenationCallback((word) => [word]);
};
