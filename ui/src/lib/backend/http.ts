import { type Call, Trouble, troubleIn } from './backend';

/** Calls over loopback HTTP, for the checks in a browser. */
export const callOverHttp: Call = async <T>(command: string, args: Record<string, unknown>) => {
  const response = await fetch(`/api/${command}`, { method: 'POST', body: JSON.stringify(args) });
  const answer = (await response.json()) as { ok?: T; problem?: unknown };
  if ('ok' in answer) return answer.ok as T;
  throw troubleIn(answer.problem) ?? new Trouble('unreachable', null, '');
};
