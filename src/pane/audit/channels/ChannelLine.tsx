import type { JSX } from 'preact';
import type { ChannelResult } from '../../../audit/model/report.ts';
import { Said } from '../../parts/Said.tsx';
import { Badge } from './Badge.tsx';
import { headline } from './headline.ts';

/** One channel of the list: verdict, tag, where it is, and the worst of it. */
export function ChannelLine({ channel }: { channel: ChannelResult }): JSX.Element {
  const where = [channel.machine, channel.location].filter((text) => text !== '').join(', ');
  return (
    <>
      <span class="channel-first">
        <Badge verdict={channel.verdict} />
        <b class="cut">
          <Said text={channel.tag} most={60} />
        </b>
        {where !== '' && (
          <span class="quiet cut">
            <Said text={where} most={80} />
          </span>
        )}
      </span>
      <span class="quiet cut">
        <Said text={headline(channel)} most={120} />
      </span>
    </>
  );
}
