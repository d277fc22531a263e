import { describe, expect, test } from "vitest"
import { ALIKE_SHARE, holds, numberOf } from "../../src/clinic/lessons/claims"
import { createPlayer, isOpen, numbersAt } from "../../src/clinic/lessons/player"
import { presentation } from "../../src/clinic/lessons/present"
import { readLesson } from "../../src/clinic/lessons/read"
import { filled } from "../../src/clinic/lessons/placeholders"
import type { StagedLesson } from "../../src/clinic/lessons/stage"
import { holdToCompare } from "../../src/commands/compare"
import { setNumber } from "../../src/commands/numbers"
import { slotNamed } from "../../src/scene/slots"
import { createBench } from "../../src/state/bench"
import { beside } from "../../src/state/compared"
import { defaultPreferences } from "../../src/state/preferences"
import type { Language } from "../../src/words/language"
import { sceneFile } from "./shippedLessons"

type Loose = Record<string, unknown>

/** A small lesson: a look, a prediction, and something to do. */
const lesson = () => ({
  format: "bow-balance-bench-lesson",
  version: 1,
  name: "Discs",
  about: "What discs do",
  scenes: { bow: "beginner-one-rod" },
  control: { of: "front/weights:count", from: 0, to: 9 },
  steps: [
    { heading: "Look", say: "It weighs {now massG}.", scene: "bow", numbers: ["massG"], look: "top" },
    {
      heading: "Foretell",
      say: "Now {next front/weights:count} discs.",
      predict: {
        question: "And the mass?",
        next: { set: { "front/weights:count": 7 } },
        choices: [
          { says: "less", if: [{ of: "massG", becomes: "less" }], reply: "No: {change massG}." },
          {
            says: "more",
            if: [{ of: "massG", becomes: "more" }],
            reply: "From {held massG}: {change massG}, {times massG} times.",
          },
        ],
      },
    },
    {
      heading: "Do",
      say: "Bring it to {goal}.",
      touch: true,
      goal: { of: "massG", between: [1620, 1660], reply: "It is {now massG}." },
    },
  ] as Loose[],
})

const read = (document: unknown, reading?: Language) => readLesson(JSON.stringify(document), sceneFile, reading)

async function staged(document: unknown = lesson(), reading?: Language) {
  const result = await read(document, reading)
  if (!result.ok) throw new Error(JSON.stringify(result.errors))
  return result.value
}

/** The errors of a lesson as "path: message" lines. */
async function refused(document: unknown): Promise<string[]> {
  const result = await read(document)
  if (result.ok) throw new Error("it was taken")
  return result.errors.map(({ path, message }) => `${path}: ${message}`)
}

function broken(change: (document: ReturnType<typeof lesson>) => void) {
  const document = lesson()
  change(document)
  return refused(document)
}

const predictOf = (document: ReturnType<typeof lesson>) =>
  document.steps[1]!.predict as { question: string; next: Loose; choices: { if: Loose[]; reply: string }[] }

describe("a lesson's file", () => {
  test("that is no lesson, or one of a newer bench, says so", async () => {
    expect(await refused([2, 3])).toEqual([": a list of 2 given; a lesson is one JSON object"])
    expect(await refused({ format: "else" })).toEqual([
      'format: "else" given; a lesson file says "bow-balance-bench-lesson"',
    ])
    expect((await refused({ ...lesson(), version: 7 }))[0]).toMatch(/^version: 7 given; this bench reads up to 1/)
    expect((await readLesson("{", sceneFile)).ok).toBe(false)
  })

  test("with an unknown key, a missing one or one of the wrong kind names the place", async () => {
    expect(await broken(({ steps }) => Object.assign(steps[1]!, { colour: 3 }))).toEqual([
      "steps[1].colour: is not a key of this format; check its spelling",
    ])
    expect(await broken(({ steps }) => delete steps[2]!.say)).toEqual([
      "steps[2].say: is missing; text in quotes is needed",
    ])
    expect(await broken(({ steps }) => Object.assign(steps[0]!, { numbers: ["weight"] }))).toEqual([
      expect.stringMatching(/^steps\[0\]\.numbers\[0\]: "weight" given; one of massG, /),
    ])
  })

  test("with something else in place of a number says so", async () => {
    expect(await broken(({ control }) => Object.assign(control, { from: "two" }))).toEqual([
      'control.from: "two" given; a number is needed',
    ])
  })

  test("with a scene that is not there or not valid names it", async () => {
    expect(await broken(({ steps }) => Object.assign(steps[0]!, { scene: "bough" }))).toContain(
      `steps[0].scene: "bough" given; one of this lesson's scenes is needed: bow`,
    )
    const embedded = lesson()
    Object.assign(embedded.scenes, { bow: { format: "bow-balance-bench", version: 1, name: "x" } })
    expect(await refused(embedded)).toContain(
      'scenes.bow.bow: is missing; an object with "kind" (recurve, compound) is needed',
    )
    expect(await broken(({ steps }) => delete steps[0]!.scene)).toContain(
      "steps[0].scene: is missing; the first step needs a scene",
    )
  })

  test("with more scenes than anyone shows is refused before they are looked at", async () => {
    const scenes = Object.fromEntries(Array.from({ length: 25 }, (_, index) => [`bow ${index}`, "beginner-one-rod"]))
    expect(await refused({ ...lesson(), scenes })).toEqual(["scenes: 25 given; at most 24 scenes are taken"])
  })

  test("that sets a number the scene has not, or off its range, names the number", async () => {
    const setting = (set: Loose) => broken((document) => Object.assign(predictOf(document).next, { set }))
    expect(await setting({ "front/weights:cout": 3 })).toEqual([
      "steps[1].predict.next.set.front/weights:cout: this scene has no such number",
    ])
    expect(await setting({ "front/weights:count": 2.5 })).toEqual([
      expect.stringMatching(/^steps\[1\]\.predict\.next\.set\.front\/weights:count: 2\.5 given/),
    ])
    expect(await setting({ "front/rod:innerMm": 40 })).toEqual([
      expect.stringMatching(/^steps\[1\]\.predict\.next, its rig\[0\]\.chain\[0\]\.innerMm: 40 given/),
    ])
  })

  test("that foretells what no number or more than one choice bears out is refused, with the numbers", async () => {
    expect(
      await broken((document) =>
        Object.assign(predictOf(document).choices[1]!.if[0]!, { of: "massG", becomes: "alike" }),
      ),
    ).toEqual([
      "steps[1].predict.choices: none of the choices is what the numbers say, one is needed. Mass goes from 1627 to 1767",
    ])
    expect(
      await broken((document) =>
        Object.assign(predictOf(document).choices[0]!, { if: [{ of: "massG", changes: [100, 200] }] }),
      ),
    ).toEqual([expect.stringMatching(/^steps\[1\]\.predict\.choices: 2 of the choices are what the numbers say/)])
    expect(
      await broken((document) => Object.assign(predictOf(document).choices[0]!.if[0]!, { times: [1, 2] })),
    ).toEqual(["steps[1].predict.choices[0].if[0]: one of becomes, times or changes is needed"])
  })

  test("whose words speak of numbers that are not there, or tell an answer before it is asked, is refused", async () => {
    const saying = (at: number, say: string) => broken(({ steps }) => Object.assign(steps[at]!, { say }))
    expect(await saying(0, "{held massG}")).toEqual([
      "steps[0].say: {held massG} given, but no setup is held here to compare with",
    ])
    expect(await saying(0, "{now pitchInertiaFree}")).toEqual([
      'steps[0].say: {now pitchInertiaFree} given; no number of this setup is called "pitchInertiaFree"',
    ])
    expect(await saying(1, "{next massG}")).toEqual([
      "steps[1].say: {next massG} given, which would tell the answer; the key of a setting is needed",
    ])
    expect(await saying(0, "{goal}")).toEqual(["steps[0].say: {goal} given, but this step has none"])
    expect((await saying(0, "{massG}"))[0]).toMatch(/^steps\[0\]\.say: \{massG\} given; \{goal\}, or/)
  })

  test("whose control is not there, has no room, or does not hold the setup it begins with is refused", async () => {
    const control = (changes: Loose) => broken((document) => Object.assign(document.control, changes))
    expect(await control({ of: "front/rod#2:lengthMm" })).toEqual([
      'control.of: "front/rod#2:lengthMm" given; this scene has no such number',
    ])
    expect(await control({ from: 9, to: 3 })).toEqual(["control.to: 3 given; more than 9 is needed"])
    expect(await control({ to: 5 })).toEqual(["control: 0 to 5 given, but a step that lets it be touched begins at 7"])
    expect(await broken(({ steps }) => delete steps[2]!.touch)).toEqual([
      "steps[2].goal: given in a step that lets nothing be touched; add touch: true",
    ])
  })

  test("reports what is wrong with every step at once", async () => {
    const errors = await broken(({ steps }) => {
      Object.assign(steps[0]!, { say: "{goal}" })
      Object.assign(steps[1]!, { say: "{goal}", scene: "bow" })
    })
    expect(errors.slice(0, 2).map((line) => line.split(":")[0])).toEqual(["steps[0].say", "steps[1].say"])
  })
})

describe("a text of a lesson", () => {
  const saying = (at: number, texts: Loose) => {
    const document = lesson()
    Object.assign(document.steps[at]!, texts)
    return document
  }

  test("may be given once, or in each language and then is read in the reader's", async () => {
    const document = saying(2, { heading: { en: "Do", fr: "Faire" } })
    Object.assign(document, { name: { en: "Discs", fr: "Disques" } })
    Object.assign(predictOf(document).choices[0]!, { says: { en: "less", fr: "moins" } })
    Object.assign(document.steps[2]!.goal as Loose, { reply: { en: "Now {now massG}.", fr: "Voici {now massG}." } })
    const said = ({ lesson, steps }: StagedLesson) => [
      lesson.name,
      lesson.about,
      steps[1]!.step.predict?.choices.map(({ says }) => says),
      steps[2]!.step.heading,
      steps[2]!.step.goal?.reply,
      lesson.steps[2]!.heading,
    ]
    expect(said(await staged(document, "en"))).toEqual([
      "Discs",
      "What discs do",
      ["less", "more"],
      "Do",
      "Now {now massG}.",
      "Do",
    ])
    expect(said(await staged(document, "fr"))).toEqual([
      "Disques",
      "What discs do",
      ["moins", "more"],
      "Faire",
      "Voici {now massG}.",
      "Faire",
    ])
  })

  test("that lacks a language, or has one that the page does not speak, is refused at its place", async () => {
    expect(await refused(saying(1, { say: { en: "Now." } }))).toEqual([
      "steps[1].say.fr: is missing; text in quotes is needed",
    ])
    expect(await refused(saying(0, { heading: { en: "Look", fr: "Voir", tlh: "Qap" } }))).toEqual([
      "steps[0].heading.tlh: is not a key of this format; check its spelling",
    ])
    expect(await refused(saying(0, { heading: { en: "Look", fr: "x".repeat(161) } }))).toEqual([
      "steps[0].heading.fr: too long; at most 160 characters",
    ])
    expect(await refused(saying(0, { heading: 7 }))).toEqual(["steps[0].heading: 7 given; text in quotes is needed"])
  })

  test("is held to the numbers in every language, whoever reads it", async () => {
    expect(await refused(saying(0, { say: { en: "{now massG}", fr: "{held massG}" } }))).toEqual([
      "steps[0].say.fr: {held massG} given, but no setup is held here to compare with",
    ])
  })
})

describe("a claim", () => {
  test("of more, less and alike leaves a fiftieth to either side as alike", () => {
    const before = -200
    const edge = ALIKE_SHARE * 200
    expect(holds({ of: "massG", becomes: "more" }, before, before + edge + 0.1)).toBe(true)
    expect(holds({ of: "massG", becomes: "alike" }, before, before + edge - 0.1)).toBe(true)
    expect(holds({ of: "massG", becomes: "alike" }, before, before - edge - 0.1)).toBe(false)
    expect(holds({ of: "massG", becomes: "less" }, before, before - edge - 0.1)).toBe(true)
    expect(holds({ of: "massG", becomes: "more" }, before, before - edge - 0.1)).toBe(false)
  })

  test("of a multiple or a difference holds within its span, and no multiple of nothing does", () => {
    expect(holds({ of: "massG", times: [2, 3] }, 5, 12)).toBe(true)
    expect(holds({ of: "massG", times: [2, 3] }, 5, 17)).toBe(false)
    expect(holds({ of: "massG", times: [2, 3] }, 0, 7)).toBe(false)
    expect(holds({ of: "massG", changes: [-3, -2] }, 7, 4.5)).toBe(true)
    expect(holds({ of: "massG", changes: [-3, -2] }, 7, 9.5)).toBe(false)
  })
})

describe("a lesson's words", () => {
  test("say their numbers in the chosen units, differences as the two are shown", async () => {
    const { steps } = await staged()
    const { predict } = steps[1]!.step
    const { asked, answered, right } = steps[1]!
    expect(right).toBe(1)
    expect(filled("{now front/weights:count}, then {next front/weights:count}", asked, defaultPreferences)).toBe(
      "2, then 7",
    )
    // Five discs of 28 g.
    expect(filled(predict!.choices[1]!.reply, answered!, defaultPreferences)).toBe(
      "From 1627\u00a0g: +140\u00a0g, 1.09 times.",
    )
    expect(filled("{change massG}", answered!, { ...defaultPreferences, massUnit: "oz" })).toBe("+4.94\u00a0oz")
    expect(filled("{goal}", steps[2]!.asked, defaultPreferences)).toBe("1620 to 1660\u00a0g")
    expect(filled("{now nothing}", asked, defaultPreferences)).toBe("–")
  })
})

test("A bow that is shown has its ideas in turn, each with numbers it has, against the held setup if there is one", async () => {
  const bench = createBench((await staged()).steps[0]!.asked.now.scene)
  setNumber.run(bench, { key: "pose:slopeDeg", value: 7 })
  const alone = presentation(bench.store.getState())
  expect(alone.steps.map(({ asked }) => asked.held)).toEqual(alone.steps.map(() => null))
  holdToCompare.run(bench, undefined)
  setNumber.run(bench, { key: "front/weights:count", value: 5 })
  const { lesson, steps } = presentation(bench.store.getState())
  expect(lesson.name).toBe("First bow with one rod")
  expect(steps.length).toBeGreaterThanOrEqual(4)
  for (const { step, asked } of steps) {
    expect(filled(step.say, asked, defaultPreferences)).not.toMatch(/[{}–]/)
    expect(step.numbers?.length).toBeGreaterThan(0)
    for (const key of step.numbers ?? []) expect(numberOf(asked.now.figures, key), key).not.toBeNull()
    // Three discs of 28 g apart, and held alike.
    expect(asked.now.figures.massG - asked.held!.figures.massG).toBeCloseTo(84, 9)
    expect(asked.held!.scene.pose).toEqual(asked.now.scene.pose)
  }
  const player = createPlayer({ lesson, steps }, defaultPreferences)
  for (let presses = 0; presses < 7; presses++) player.forward()
  expect(player.store.getState().at).toBe(steps.length - 1)
})

describe("a lesson that is shown", () => {
  const start = async () => createPlayer(await staged(), { ...defaultPreferences, pairArms: false })
  const discs = ({ bench }: Awaited<ReturnType<typeof start>>) =>
    slotNamed(bench.store.getState().scene, "front/weights:count")?.value

  test("asks before it answers: the setup changes, and the one before is held beside, only once it has been foretold", async () => {
    const player = await start()
    const { bench, store, staged } = player
    player.forward()
    expect(store.getState().at).toBe(1)
    expect(isOpen(staged, store.getState())).toBe(true)
    expect([discs(player), bench.store.getState().compared]).toEqual([2, null])
    player.answer(0)
    expect(isOpen(staged, store.getState())).toBe(false)
    expect(store.getState().answers.get(1)).toBe(0)
    expect(discs(player)).toBe(7)
    expect(slotNamed(bench.store.getState().compared!.scene, "front/weights:count")?.value).toBe(2)
    player.answer(1)
    expect(store.getState().answers.get(1), "an answer stands").toBe(0)
  })

  test("shows the setup before as it was held, even where nothing but that has changed", async () => {
    const document = lesson()
    Object.assign(predictOf(document), {
      next: { set: { "pose:slopeDeg": 20 } },
      choices: [
        { says: "less", if: [{ of: "massG", becomes: "less" }], reply: "No." },
        { says: "as before", if: [{ of: "massG", becomes: "alike" }], reply: "Yes." },
      ],
    })
    Object.assign(document.steps[1]!, { say: "Now {next pose:slopeDeg}." })
    Object.assign(document.steps[2]!, { goal: undefined, say: "Look." })
    const player = createPlayer(await staged(document), defaultPreferences)
    player.forward()
    player.answer(1)
    const state = player.bench.store.getState()
    expect(state.scene.pose.slopeDeg).toBe(20)
    expect(beside(state)?.evaluation.now.pose.slopeDeg).toBe(0)
    expect(beside(state)?.scene.pose.slopeDeg).toBe(0)
  })

  test("going on from an open question shows its answer first, and the last step is the end", async () => {
    const player = await start()
    for (let presses = 0; presses < 7; presses++) player.forward()
    expect(player.store.getState().at).toBe(2)
    expect([...player.store.getState().answers]).toEqual([[1, null]])
  })

  test("going back shows the step as it was left, answered, and never goes before the first", async () => {
    const player = await start()
    player.forward()
    player.answer(1)
    player.forward()
    player.back()
    expect([player.store.getState().at, discs(player)]).toEqual([1, 7])
    player.back()
    player.back()
    expect([player.store.getState().at, discs(player)]).toEqual([0, 2])
  })

  test("lets one number be touched, and only in a step that says so", async () => {
    const player = await start()
    const touchable = () => player.bench.store.getState().touchable
    expect(touchable()).toEqual([])
    player.forward()
    player.forward()
    player.forward()
    expect(touchable()).toEqual(["front/weights:count"])
  })

  test("can be undone within a step, and not back into the step before", async () => {
    const player = await start()
    player.forward()
    player.forward()
    player.forward()
    const { bench } = player
    expect(setNumber.run(bench, { key: "front/weights:count", value: 3 }).ok).toBe(true)
    bench.undo()
    expect(discs(player)).toBe(7)
    bench.undo()
    expect(discs(player)).toBe(7)
  })

  test("keeps the side looked from and the large numbers until a step names others", async () => {
    const player = await start()
    player.forward()
    expect(player.bench.store.getState().camera).toBe("top")
    expect(numbersAt(player.staged, 2)).toEqual(["massG"])
  })
})
