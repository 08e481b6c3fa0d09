import { defineCollection, reference } from 'astro:content'
import { glob } from 'astro/loaders'
import { z } from 'astro/zod'

/** A file is known by its own name; the folder it lies in only keeps the tree readable. */
const byFileName = ({ entry }: { entry: string }): string =>
  entry.split('/').at(-1)!.replace(/\.\w+$/, '')

const from = (folder: string, pattern: string) =>
  glob({ base: `./content/${folder}`, pattern, generateId: byFileName })

const text = z.string().trim().min(1)

const articles = defineCollection({
  loader: from('articles', '**/*.mdx'),
  schema: z.strictObject({
    title: text,
    /** The chapter it belongs to. */
    theme: reference('themes'),
    /** Its place within the chapter. */
    order: z.int().positive(),
    /** The answer, before any reason: one or two sentences. */
    answer: text,
    /** What goes wrong in practice, found by its sign in the index by symptom. */
    mistakes: z.array(z.strictObject({ sign: text, cause: text, remedy: text })).min(1),
    /** What to measure, or to ask the maker for, as ids of quantities. */
    measure: z.array(text).min(1),
    /** Ids of published sources. */
    sources: z.array(text).min(1),
    cautions: z.array(reference('cautions')).min(1),
    /** When somebody last read it against its sources. */
    reviewed: z.coerce.date(),
  }),
})

const themes = defineCollection({
  loader: from('themes', '**/*.{json,yaml}'),
  schema: z.strictObject({
    title: text,
    order: z.int().positive(),
    /** What the chapter settles, in a sentence. */
    summary: text,
  }),
})

const cautions = defineCollection({
  loader: from('cautions', '**/*.{json,yaml}'),
  schema: z.strictObject({
    title: text,
    /** What can hurt whom, and the usual care. */
    text,
    /** The rules or people it defers to, beyond local codes and licensed practice. */
    defers: text.optional(),
  }),
})

const glossary = defineCollection({
  loader: from('glossary', '**/*.{json,yaml}'),
  schema: z.strictObject({
    term: text,
    meaning: text,
    /** Other words or spellings that lead to the same entry. */
    also: z.array(text).default([]),
    /** The quantity the term names, where it is one. */
    quantity: text.optional(),
    /** The article that explains it. */
    article: reference('articles').optional(),
  }),
})

/** The links of the chain for somebody who neither builds nor tunes; a file is named after its margin. */
const plainly = defineCollection({
  loader: from('plainly', '*.json'),
  schema: z.strictObject({
    /** What the link is. */
    is: text,
    /** What is felt or breaks where there is not enough. */
    short: text,
  }),
})

const words = z.record(text, text)

/** What people type, and what it is called here. */
const search = defineCollection({
  loader: from('search', '*.json'),
  schema: z.strictObject({
    filler: text,
    spelt: words,
    patterns: z.array(z.tuple([text, text])),
    called: words,
    /** More words for one page, by its address below the base. */
    also: words,
  }),
})

export const collections = { articles, themes, cautions, glossary, plainly, search }
