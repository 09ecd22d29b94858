import type { Child } from 'hono/jsx';
import type { PageSetting } from '../page-setting.ts';

export interface ShellProps {
  title: string;
  setting: PageSetting;
  /** Said on every page of a made-up roof. */
  invented: boolean;
  navigation?: Child;
  foot?: Child;
  /** Style that belongs to this page alone. */
  extraCss?: string;
  children?: Child;
}

/** One document: head, navigation, the sun setting, the page. Works without script. */
export function Shell({ title, setting, invented, navigation, foot, extraCss, children }: ShellProps) {
  const { style, links } = setting;
  return (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>{title}</title>
        {'href' in style ? (
          <link rel="stylesheet" href={style.href} />
        ) : (
          <style dangerouslySetInnerHTML={{ __html: style.text }} />
        )}
        {extraCss === undefined ? null : <style dangerouslySetInnerHTML={{ __html: extraCss }} />}
      </head>
      <body>
        <a class="skip" href="#main">
          To the page
        </a>
        <header>
          <div class="head">
            {links === null ? (
              <span class="home">Rainpath</span>
            ) : (
              <a class="home" href={links.home}>
                Rainpath
              </a>
            )}
            {navigation}
            <label>
              <input type="checkbox" id="sun" /> Sun
            </label>
          </div>
          {invented ? <p class="invented">Invented roof: made up to show the work, not a real building.</p> : null}
        </header>
        <main id="main">{children}</main>
        {foot === undefined || foot === null ? null : <footer>{foot}</footer>}
      </body>
    </html>
  );
}
