import type { PageSetting } from '../page-setting.ts';
import { DeskPage } from './desk-page.tsx';

export interface WorkingPageProps {
  /** What is done now, then what is behind it. */
  lines: readonly string[];
  /** Address of the page that is waited for. */
  here: string;
  setting: PageSetting;
}

/** Shown while an answer takes longer than a person waits in silence. It looks again by itself, with or without script. */
export function WorkingPage({ lines, here, setting }: WorkingPageProps) {
  const [now, ...behind] = lines;
  return (
    <DeskPage title="Working it out" here={null} setting={setting}>
      <div class="plain" role="status">
        <h1>Working it out</h1>
        <p class="lead">{now}</p>
        {behind.map((line) => (
          <p>{line}</p>
        ))}
        <p>
          This page looks again every second. <a href={here}>Look now</a>
        </p>
      </div>
    </DeskPage>
  );
}
