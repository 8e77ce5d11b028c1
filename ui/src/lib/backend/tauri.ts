import { invoke } from '@tauri-apps/api/core';

import { type Call, troubleIn } from './backend';

/** Calls through the shell. */
export const callShell: Call = async <T>(command: string, args: Record<string, unknown>) => {
  try {
    return await invoke<T>(command, args);
  } catch (thrown) {
    throw troubleIn(thrown) ?? thrown;
  }
};
