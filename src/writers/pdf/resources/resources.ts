import type { PDFContext, PDFDict, PDFRef } from 'pdf-lib';
import type { Raster } from '../../../figures/index.js';
import type { FontFace } from '../../../text/index.js';
import { createFonts, type PdfFont } from './fonts.js';
import { colorShading, type Gradient, hasTransparentStop, opacityShading } from './gradients.js';
import { embedImage } from './images.js';

/** A box in the coordinates of a form: left, low, right, high. */
export type Box = readonly [number, number, number, number];

/** Names of things that content streams refer to. All pages share one dictionary of resources. */
export interface Resources {
  font(face: FontFace): PdfFont;
  /** Graphics state that sets how much fills and strokes cover, 0 to 1. */
  opacity(fill: number, stroke: number): string;
  gradient(gradient: Gradient): string;
  /** Graphics state that hides by the gradient's opacities within `box`, if any stop is not solid. */
  gradientMask(gradient: Gradient, placed: string, box: Box): string | undefined;
  /** A group that is painted as one thing. */
  form(content: string, box: Box): string;
  image(raster: Raster): string;
  /** Where the dictionary will stand. */
  readonly ref: PDFRef;
  /** Writes the dictionary and the fonts. Call once, after all pages are drawn. */
  finish(): void;
}

export function createResources(context: PDFContext): Resources {
  const ref = context.nextRef();
  const fonts = createFonts(context);
  const states: Named = { prefix: 'G', refs: {}, byKey: new Map() };
  const shadings: Named = { prefix: 'S', refs: {}, byKey: new Map() };
  const objects: Named = { prefix: 'X', refs: {}, byKey: new Map() };

  const state = (key: string, entries: () => StateEntries) =>
    named(states, key, () => context.register(context.obj({ Type: 'ExtGState', ...entries() })));
  const shade = (key: string, make: () => PDFDict) => named(shadings, key, () => context.register(make()));
  const formStream = (content: string, box: Box, group: { readonly [key: string]: string | boolean }) =>
    context.register(
      context.flateStream(content, {
        Type: 'XObject',
        Subtype: 'Form',
        BBox: [...box],
        Resources: ref,
        Group: context.obj({ Type: 'Group', S: 'Transparency', ...group }),
      }),
    );

  return {
    ref,
    font: (face) => fonts.use(face),
    opacity: (fill, stroke) => state(`opacity ${fill} ${stroke}`, () => ({ ca: fill, CA: stroke })),
    gradient: (gradient) => shade(`color ${JSON.stringify(gradient)}`, () => colorShading(context, gradient)),
    gradientMask(gradient, placed, box) {
      if (!hasTransparentStop(gradient)) return undefined;
      const key = JSON.stringify([gradient, placed, box]);
      const name = shade(`opacity ${JSON.stringify(gradient)}`, () => opacityShading(context, gradient));
      return state(`mask ${key}`, () => ({
        SMask: {
          Type: 'Mask',
          S: 'Luminosity',
          G: formStream(`${placed}/${name} sh\n`, box, { CS: 'DeviceGray', I: true }),
        },
      }));
    },
    form: (content, box) =>
      // The group takes the page's own colors, so that black stays black alone.
      named(objects, `form ${box.join()} ${content}`, () => formStream(content, box, { I: true })),
    image: (raster) => named(objects, raster, () => embedImage(context, raster)),
    finish() {
      context.assign(
        ref,
        context.obj({
          Font: fonts.finish(),
          ExtGState: states.refs,
          Shading: shadings.refs,
          XObject: objects.refs,
        }),
      );
    },
  };
}

type StateEntries =
  | { readonly ca: number; readonly CA: number }
  | { readonly SMask: { readonly Type: string; readonly S: string; readonly G: PDFRef } };

interface Named {
  readonly prefix: string;
  readonly refs: Record<string, PDFRef>;
  readonly byKey: Map<unknown, string>;
}

/** The name of the thing under `key`; it is made when it is asked for first. */
function named(list: Named, key: unknown, make: () => PDFRef): string {
  const known = list.byKey.get(key);
  if (known) return known;
  const name = `${list.prefix}${list.byKey.size + 1}`;
  list.byKey.set(key, name);
  list.refs[name] = make();
  return name;
}
