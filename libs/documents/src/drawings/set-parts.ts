import { type SlotName, slotPath } from '@flangewise/model';
import { polyline } from './contour.js';
import { boltAxes, drawClosure, drawRearBolts } from './draw-closure.js';
import { drawContents, drawLevels } from './draw-contents.js';
import { couplingTop, drawCoupling } from './draw-coupling.js';
import { drawCover, drawSeal } from './draw-cover.js';
import { drawBarDrive, drawBarMagnets, drawDrive, driveTop, platePlace } from './draw-drive.js';
import { drawFitting } from './draw-fittings.js';
import { drawFlow, drawRelief, drawVentLine } from './draw-relief.js';
import {
  drawBaffles,
  drawBasket,
  drawBelowPort,
  drawBottomValve,
  drawCoilBehind,
  drawCoilCut,
} from './draw-internals.js';
import { drawMantle } from './draw-mantle.js';
import { drawShaft } from './draw-shaft.js';
import { drawStirrer, drawStirrerBehind } from './draw-stirrer.js';
import { drawShield, drawShieldBehind } from './draw-shield.js';
import { drawJacket, drawJacketConnections, drawVessel } from './draw-vessel.js';
import type { DrawingModel } from './drawing-model.js';
import { placeFittings } from './place-fittings.js';
import type { Part, Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { stroke } from './shape.js';

const axes = (layout: SetLayout, drive: DrawingModel['drive']): Shape[] => {
  const u = layout.detail;
  const bar = layout.set.stirrer?.impeller === 'magnetic bar';
  const top = bar
    ? layout.coverTop - 10 * u
    : drive === null
      ? couplingTop(layout) - 8 * u
      : driveTop(layout, drive) - 12 * u;
  const { seal } = layout.set;
  const plate = drive === null || bar ? null : platePlace(layout, drive);
  const end = layout.bottom + (layout.set.bottomValve === null ? 24 : 8) * u;
  const sealAxis = seal === null ? [] : [seal.diameter / 2, -seal.diameter / 2];
  return [
    stroke(
      'centre',
      ...(plate === null
        ? [polyline([0, top], [0, end])]
        : [polyline([0, top], [0, plate.top]), polyline([0, plate.bottom], [0, end])]),
    ),
    ...(layout.set.closure?.kind === 'bolted'
      ? [boltAxes(layout)]
      : [stroke('centre', ...sealAxis.map((x) => polyline([x, -9 * u], [x, 11 * u])))]),
  ];
};

/**
 * Everything that belongs to one set, in painter's order: what lies behind first, then the contents, the
 * cut bodies from inside to outside, at last axes and levels. `drive` is null for a set that is not mounted.
 */
export const setParts = (layout: SetLayout, model: DrawingModel, drive: DrawingModel['drive']): Part[] => {
  const { set } = layout;
  const ports = placeFittings(layout);
  const at = (slot: SlotName, shapes: readonly Shape[]): Part => ({
    slot: slotPath(slot, set.index),
    shapes,
  });
  const free = (shapes: readonly Shape[]): Part => ({ slot: null, shapes });
  const reliefPort = ports.find((port) => port.kind === 'relief');
  const behind = ports.filter((port) => !port.cut);
  const bar = set.stirrer?.impeller === 'magnetic bar';
  const connections = model.circulator
    ? at('circulator', drawJacketConnections(layout))
    : at('vessel', drawJacketConnections(layout));
  return [
    at('shield', drawShieldBehind(layout)),
    at('closure', drawRearBolts(layout)),
    ...behind.map((port): Part => ({ slot: port.slot, shapes: drawFitting(layout, port) })),
    at('heater', drawMantle(layout)),
    connections,
    at('vessel', drawJacket(layout)),
    free(drawContents(layout)),
    at('vessel', drawVessel(layout)),
    at('baffles', drawBaffles(layout)),
    at('stirrer', drawStirrerBehind(layout)),
    at('coil', drawCoilBehind(layout, ports)),
    ...ports.map((port): Part => ({ slot: port.slot, shapes: drawBelowPort(layout, port) })),
    at('basket', drawBasket(layout)),
    at('shaft', drawShaft(layout)),
    at('stirrer', drawStirrer(layout)),
    at('coil', drawCoilCut(layout)),
    at('bottomValve', drawBottomValve(layout)),
    at('cover', drawCover(layout, ports)),
    at('seal', drawSeal(layout)),
    at('closure', drawClosure(layout)),
    ...ports
      .filter((port) => port.cut)
      .map((port): Part => ({ slot: port.slot, shapes: drawFitting(layout, port) })),
    at('ventLine', drawVentLine(layout, reliefPort)),
    free(drawFlow(layout, reliefPort)),
    at('relief', drawRelief(layout, reliefPort)),
    at('coupling', drawCoupling(layout)),
    ...(drive === null ? [] : [at('drive', bar ? drawBarDrive(layout) : drawDrive(layout, drive))]),
    ...(bar && set.coupling !== null ? [at('coupling', drawBarMagnets(layout))] : []),
    at('shield', drawShield(layout)),
    free(axes(layout, drive)),
    free(drawLevels(layout, ports)),
  ].filter(({ shapes }) => shapes.length > 0);
};
