/** Addresses that the pages of one roof link to. Null in saved papers, which link nowhere. */
export interface PageLinks {
  home: string;
  result: string;
  estimate: string;
  crew: string;
  owner: string;
  /** Two choices side by side, to fill in together. */
  kitchen: string;
  supplier: string;
  /** The same roof under the other codes. */
  rules: string;
  /** What is carried onto the roof to measure it. */
  survey: string;
  edit: string;
  /** Where findings are noted, and the address that their photos stand under. */
  findings: string;
  photos: string;
  /** Where readings at the marks of the survey are typed in. */
  readings: string;
  file: string;
  /** Where as-built heights are sent. */
  asBuilt: string;
  /** One drawing at full size: `${drawing}/before.svg`, `after.svg`, `boards.svg`. */
  drawing: string;
}

/** What a page needs besides the answer. */
export interface PageSetting {
  links: PageLinks | null;
  /** Address of the style sheet, or its text in a saved paper. */
  style: { href: string } | { text: string };
  /** Date as somebody typed it; null leaves a blank to fill in. */
  dateText: string | null;
  /** Where an edit waits that cannot be read yet; the page is then made from the last file that could be read. */
  draftHref?: string | null;
}

export function roofLinks(id: string): PageLinks {
  const roof = `/roofs/${encodeURIComponent(id)}`;
  return {
    home: '/',
    result: roof,
    estimate: `${roof}/estimate`,
    crew: `${roof}/crew`,
    owner: `${roof}/owner`,
    kitchen: `${roof}/kitchen-table`,
    supplier: `${roof}/supplier`,
    rules: `${roof}/rules`,
    survey: `${roof}/survey`,
    edit: `${roof}/edit`,
    findings: `${roof}/edit/findings`,
    photos: `${roof}/photos`,
    readings: `${roof}/edit/readings`,
    file: `${roof}/file`,
    asBuilt: `${roof}/as-built`,
    drawing: `${roof}/drawings`,
  };
}
