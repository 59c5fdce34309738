/** An edit that would leave no valid setup. The message is a sentence for the user; nothing has changed. */
export class EditRefused extends Error {
  override readonly name = 'EditRefused';
}
