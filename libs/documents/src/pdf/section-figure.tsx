/** @jsxRuntime automatic */
import type { SlotPath } from '@flangewise/model';
import { Canvas } from '@react-pdf/renderer';
import { arrangeSheet } from '../drawings/arrange-sheet.js';
import type { Scene } from '../drawings/scene.js';
import { paintScene } from './paint-scene.js';
import type { Painter } from './painter.js';
import { ptPerMm } from './print-style.js';

interface SectionFigureProps {
  readonly scene: Scene;
  readonly width: number;
  readonly height: number;
  readonly callouts: 'numbers' | 'none';
  /** Scale `1 : n`; as large as fits without. */
  readonly denominator?: number;
  readonly numbers?: ReadonlyMap<SlotPath, number>;
}

/** The scene as vector graphics of the page. */
export const SectionFigure = ({
  scene,
  width,
  height,
  callouts,
  denominator,
  numbers,
}: SectionFigureProps) => (
  <Canvas
    style={{ width, height }}
    paint={(painter: Painter) => {
      const scale = denominator === undefined ? undefined : ptPerMm / denominator;
      paintScene(painter, scene, arrangeSheet(scene, { width, height, callouts, scale, numbers }));
      return null;
    }}
  />
);
