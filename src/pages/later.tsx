/** A page whose script is fetched when it is first opened, so that the others do not carry it. */
import { useSignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import { Page } from './frame.js';

interface Props<P> {
  readonly title: string;
  readonly kind: string;
  readonly fetch: () => Promise<ComponentType<P>>;
  readonly props: P;
}

/**
 * Shows the page once it is here; until then its frame, and where it cannot be fetched, that and another try. Two of them
 * stand at the same place in the tree, so each is known by its title: what was fetched for one is never shown for the next.
 */
export const Later = <P extends object>(all: Props<P>) => <Fetched key={all.title} {...all} />;

function Fetched<P extends object>({ title, kind, fetch, props }: Props<P>) {
  const page = useSignal<{ readonly is: ComponentType<P> } | null>(null);
  const failed = useSignal(false);
  const get = (): void => {
    failed.value = false;
    fetch().then((is) => { page.value = { is }; }, () => { failed.value = true; });
  };
  useEffect(get, []);
  if (page.value !== null) {
    const Is = page.value.is;
    return <Is {...props} />;
  }
  return (
    <Page title={title} kind={kind}>
      <h1>{title}</h1>
      {failed.value
        ? <p class="note" role="alert"><span>This page could not be fetched; the server may have gone.</span> <button class="plain" type="button" onClick={get}>Try again</button></p>
        : <p class="waiting">Fetching the page …</p>}
    </Page>
  );
}
