import { type Worker } from 'node:worker_threads'
import { ThreadsPoolWorker, type PoolOptions, type WorkerRequest } from 'vitest/node'
import { type Plugin } from 'vitest/config'

type Insides = { _thread?: Worker | undefined }

let kept: Worker | undefined

/**
 * A test thread that outlives its run. Every mutant is a run of its own, and starting a thread and reading the whole package again takes
 * a hundred times longer than the few tests that a mutant needs. The thread is told neither to stop nor to start twice: it is answered for.
 */
class KeptThread extends ThreadsPoolWorker {
  override readonly name = 'kept'
  readonly project: PoolOptions['project']
  #again = false

  constructor(options: PoolOptions) {
    super(options)
    this.project = options.project
  }
  get #insides(): Insides { return this as unknown as Insides }

  override async start(): Promise<void> {
    this.#again = kept !== undefined
    if (kept) this.#insides._thread = kept
    else await super.start()
    kept = this.#insides._thread
  }
  override send(message: WorkerRequest): void {
    if (message.type === 'stop') this.#answer('stopped')
    else if (message.type === 'start' && this.#again) this.#answer('started')
    // What a thread learns at its start (the names of the tests to run) differs from run to run.
    else if (message.type === 'run') super.send({ ...message, context: { ...message.context, config: this.project.serializedConfig } } as WorkerRequest)
    else super.send(message)
  }
  override async stop(): Promise<void> {
    for (const event of ['message', 'error', 'exit']) kept?.removeAllListeners(event)
    kept?.unref()
    this.#insides._thread = undefined
  }
  #answer(type: 'started' | 'stopped'): void {
    queueMicrotask(() => this.#insides._thread?.emit('message', { type, __vitest_worker_response__: true }))
  }
}

/** Has every project run in the one kept thread, whatever pool the command asks for. */
export const keepThread: Plugin = {
  name: 'keep-thread',
  configureVitest({ project, vitest }) {
    vitest.onClose(async () => { await kept?.terminate() })
    project.config.isolate = false
    project.config.pool = 'kept'
    project.config.poolRunner = { name: 'kept', createPoolWorker: (options) => new KeptThread(options) }
  },
}
