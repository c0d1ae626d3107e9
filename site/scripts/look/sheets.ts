/** Contact sheets: strips of pages beside one another, each under its address. */
import sharp from 'sharp';

const SHEET = { width: 1560, height: 1500 };
const HEAD = 16;

export class ContactSheets {
  readonly #name: string;
  readonly #strip: number;
  #strips: { readonly head: string; readonly picture: Buffer }[] = [];
  #count = 0;

  /** Sheets `name-1.png` and so on, of pages `width` pixels wide. */
  constructor(name: string, width: number) {
    this.#name = name;
    this.#strip = width < 600 ? 195 : width < 1000 ? 312 : 520;
  }

  /** Scales a picture of a page, cuts it into strips and puts them on the sheet. */
  async add(head: string, picture: Buffer): Promise<void> {
    const { data, info } = await sharp(picture)
      .resize({ width: this.#strip - 5 })
      .toBuffer({ resolveWithObject: true });
    const tall = SHEET.height - HEAD;
    for (let top = 0; top < info.height; top += tall) {
      const height = Math.min(tall, info.height - top);
      if (top > 0 && height < 60) break;
      const strip = await sharp(data)
        .extract({ left: 0, top, width: info.width, height })
        .png()
        .toBuffer();
      this.#strips.push({ head: top === 0 ? head : `${head} ...`, picture: strip });
      if (this.#strips.length * this.#strip > SHEET.width - this.#strip) await this.finish();
    }
  }

  /** Writes the sheet that was begun. */
  async finish(): Promise<void> {
    if (this.#strips.length === 0) return;
    this.#count += 1;
    const strips = this.#strips;
    this.#strips = [];
    const titles = strips
      .map(
        ({ head }, at) =>
          `<text x="${at * this.#strip + 2}" y="12" font-size="11" font-family="sans-serif">${head.replace('/examples', '/ex')}</text>`,
      )
      .join('');
    await sharp({ create: { ...SHEET, channels: 3, background: '#e8a' } })
      .composite([
        {
          input: Buffer.from(
            `<svg xmlns="http://www.w3.org/2000/svg" width="${SHEET.width}" height="${HEAD}">${titles}</svg>`,
          ),
          left: 0,
          top: 0,
        },
        ...strips.map(({ picture }, at) => ({ input: picture, left: at * this.#strip, top: HEAD })),
      ])
      .png()
      .toFile(`${this.#name}-${this.#count}.png`);
  }
}
