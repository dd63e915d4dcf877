import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Actor, AnyActorLogic, SnapshotFrom } from 'xstate';

/**
 * Joins one actor to one element: renders again at each change of state, and says when the actor broke, since an
 * actor with an error goes quiet.
 */
export class ActorController<Logic extends AnyActorLogic> implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #broke: (reason: unknown) => void;
  readonly #changed: (snapshot: SnapshotFrom<Logic>) => void;
  #actor: Actor<Logic> | undefined;
  #stop: (() => void) | undefined;

  constructor(
    host: ReactiveControllerHost,
    changed: (snapshot: SnapshotFrom<Logic>) => void,
    broke: (reason: unknown) => void,
  ) {
    this.#host = host;
    this.#changed = changed;
    this.#broke = broke;
    host.addController(this);
  }

  get actor(): Actor<Logic> | undefined {
    return this.#actor;
  }

  /** Drops the actor before, if any, and follows this one from its start. */
  follow(actor: Actor<Logic>): void {
    this.drop();
    this.#actor = actor;
    const subscription = actor.subscribe({
      next: (snapshot) => {
        this.#changed(snapshot as SnapshotFrom<Logic>);
        this.#host.requestUpdate();
      },
      error: this.#broke,
    });
    this.#stop = () => subscription.unsubscribe();
    actor.start();
    this.#host.requestUpdate();
  }

  drop(): void {
    this.#stop?.();
    this.#actor?.stop();
    this.#actor = undefined;
    this.#stop = undefined;
  }

  hostDisconnected(): void {
    this.drop();
  }
}
