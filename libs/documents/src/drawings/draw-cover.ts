import { box, type Contour, mirrored, polyline } from './contour.js';
import type { PlacedPort } from './place-fittings.js';
import type { Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { cut, seen, stroke } from './shape.js';

const centreBore = (layout: SetLayout): number =>
  layout.set.coupling === null && layout.set.shaft === null
    ? 0
    : Math.min(layout.shaftRadius * 2, layout.neckRadius * 0.7);

/** How far the cover reaches into the bore. */
const spigotOf = (layout: SetLayout): number =>
  layout.set.vessel.construction === 'metal' ? Math.min(6 * layout.detail, layout.cylinder * 0.05) : 0;

/** The outer part of the cover to the right of x, with its rim. */
const outerPiece = (layout: SetLayout, x: number): Contour => {
  const { coverTop, coverRadius, rimFace, rimHeight, outer, inner, detail, set } = layout;
  const thickness = -coverTop;
  const spigot = spigotOf(layout);
  const chamfer = Math.min(1.2 * detail, thickness / 10);
  const under: Contour = polyline(
    [coverRadius, -chamfer],
    [coverRadius - chamfer, 0],
    ...(spigot > 0 && x < inner - 1
      ? ([
          [inner - 0.8, 0],
          [inner - 0.8, spigot],
          [x, spigot],
        ] as const)
      : ([[x, 0]] as const)),
  );
  const gripped = set.closure?.kind === 'clamp' || set.closure?.kind === 'segment';
  const face = Math.min(rimFace, 0.65 * thickness);
  const boss = Math.max(outer * 0.955, x + 1);
  const top: Contour = gripped
    ? polyline(
        [x, coverTop],
        [boss, coverTop],
        [boss + 2 * detail, -Math.min(rimHeight, 0.84 * thickness)],
        [coverRadius, -face],
      )
    : polyline([x, coverTop], [coverRadius - chamfer, coverTop], [coverRadius, coverTop + chamfer]);
  return [...top, ...under];
};

const half = (layout: SetLayout, port: PlacedPort | undefined): Contour[] => {
  const bore = centreBore(layout);
  if (port === undefined) return [outerPiece(layout, bore)];
  const [from, to] = [Math.abs(port.x) - port.port.diameter / 2, Math.abs(port.x) + port.port.diameter / 2];
  const innerPiece = box([bore, layout.coverTop], [Math.max(bore + 0.2, from), spigotOf(layout)]);
  return [innerPiece, outerPiece(layout, to)];
};

/** The cover, cut through its centre bore and the ports that are turned into the plane. */
export const drawCover = (layout: SetLayout, ports: readonly PlacedPort[]): Shape[] => {
  const { cover } = layout.set;
  if (cover === null) return [];
  const right = ports.find((port) => port.cut && port.x > 0);
  const left = ports.find((port) => port.cut && port.x < 0);
  const spigot = spigotOf(layout);
  const reach = spigot > 0 ? layout.inner - 0.8 : layout.coverRadius - 2 * layout.detail;
  const film = Math.min(4 * layout.detail, 0.2 * cover.thickness);
  return [
    seen(box([-reach, layout.coverTop], [reach, spigot]), 'gas', 'none'),
    stroke('fine', polyline([-reach, spigot], [reach, spigot])),
    ...half(layout, right).map((piece) => cut(piece, cover.body, { turned: true })),
    ...half(layout, left).map((piece) => cut(mirrored(piece), cover.body, { turned: true })),
    ...(cover.lined
      ? [1, -1].map((side) =>
          cut(box([side * centreBore(layout), -film], [side * layout.rim * 0.93, 0]), 'polymer'),
        )
      : []),
  ];
};

/** The seal between rim and cover. */
export const drawSeal = (layout: SetLayout): Shape[] => {
  const { seal, vessel } = layout.set;
  if (seal === null) return [];
  const x = Math.min(Math.max(seal.diameter / 2, layout.inner + 1), layout.rim - 1);
  const size = Math.min(2.6 * layout.detail, (layout.rim - layout.inner) * 0.22, vessel.rimHeight * 0.2);
  return [x, -x].map((centre) => {
    if (seal.kind === 'flat gasket')
      return seen(box([centre - 2.2 * size, -size * 0.5], [centre + 2.2 * size, size * 0.5]), 'solid');
    return {
      kind: 'circle',
      centre: [centre, size * 0.6],
      radius: size,
      line: seal.kind === 'metal ring' ? 'cut' : 'none',
      fill: seal.kind === 'metal ring' ? 'part' : 'solid',
    };
  });
};
