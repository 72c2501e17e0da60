/** @jsxRuntime automatic */
import type { Status } from '@flangewise/model';
import { Canvas } from '@react-pdf/renderer';
import { paintMark } from './paint-mark.js';
import type { Painter } from './painter.js';

/** The mark of a state beside a text. */
export const StatusMark = ({ status, size }: { status: Status; size: number }) => (
  <Canvas
    style={{ width: size, height: size }}
    paint={(painter: Painter) => {
      paintMark(painter, status, { at: [size / 2, size / 2], size });
      return null;
    }}
  />
);
