import { ModuleMocker } from 'jest-mock';

/** The surroundings that Jest wants of each test file; nothing runs in them, see native-runner.mjs. */
export default class NativeEnvironment {
  global = {};
  moduleMocker = new ModuleMocker(globalThis);
  fakeTimers = null;
  fakeTimersModern = null;
  setup = () => Promise.resolve();
  teardown = () => Promise.resolve();
  getVmContext = () => null;
  exportConditions = () => ['node'];
}
