import { createContext, useContext, useLayoutEffect } from "react"
import { createStore, type StoreApi } from "zustand/vanilla"

/** Fields with something in them that cannot be taken: what each is called, by its id, in the order they went wrong. */
export type FieldProblems = StoreApi<ReadonlyMap<string, string>>

export const createFieldProblems = (): FieldProblems => createStore<ReadonlyMap<string, string>>(() => new Map())

/** Set where something must not be done while a field is wrong. */
export const FieldProblemsContext = createContext<FieldProblems | null>(null)

/** Counts the field `id`, called `name`, among the wrong ones for as long as it is `wrong` and on the page. */
export function useFieldProblem(id: string, name: string, wrong: boolean): void {
  const problems = useContext(FieldProblemsContext)
  // Before the click that made the field be left is heard.
  useLayoutEffect(() => {
    if (!wrong || problems === null) return
    problems.setState((before) => new Map([...before, [id, name]]), true)
    return () => problems.setState((before) => new Map([...before].filter(([each]) => each !== id)), true)
  }, [problems, id, name, wrong])
}
