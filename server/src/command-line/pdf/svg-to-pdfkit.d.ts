declare module 'svg-to-pdfkit' {
  import type Pdf from 'pdfkit';

  /** Draws SVG text into a document at a place in points. */
  export default function drawSvg(
    pages: InstanceType<typeof Pdf>,
    svg: string,
    x: number,
    y: number,
    options: {
      readonly width: number;
      readonly height: number;
      readonly assumePt: boolean;
      readonly preserveAspectRatio: string;
      /** The name of a registered font. */
      readonly fontCallback: (family: string, bold: boolean, italic: boolean) => string;
    },
  ): void;
}
