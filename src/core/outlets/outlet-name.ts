import type { Outlet } from '../roof.ts';

/** "drain D1", "new scupper"; "new drain 2" where several of a kind are new. */
export function outletName(outlet: Outlet, all: readonly Outlet[]): string {
  if (outlet.status !== 'proposed') return `${outlet.kind} ${outlet.id}`;
  const alike = all.filter(({ status, kind }) => status === 'proposed' && kind === outlet.kind);
  return alike.length < 2 ? `new ${outlet.kind}` : `new ${outlet.kind} ${alike.indexOf(outlet) + 1}`;
}
