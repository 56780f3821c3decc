package groupwright.workbench.documents;

import groupwright.definition.figure.Ask;
import groupwright.definition.ledger.View;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;
import groupwright.documents.project.Numbers;
import groupwright.documents.trace.NumberedEntry;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What the numbers of documents read when each was written last, kept from start to start. The texts are those of one fixed
 * reader, so that another language or other measures change no number.
 *
 * @param documents by their names
 */
record WrittenNumbers(Map<String, Texts> documents) {
    static final WrittenNumbers NONE = new WrittenNumbers(Map.of());
    private static final String FILE = "written.properties";
    private static final char APART = '\t';

    /**
     * The numbers of one document.
     *
     * @param byQuestion answers as texts, by the question in the figure grammar
     */
    record Texts(Map<String, String> byQuestion) {
        Texts {
            byQuestion = Map.copyOf(byQuestion);
        }

        /** The numbers that stand in a document's text. On the ledger's thread. */
        static Texts of(View view, Numbers.Read numbers) {
            AnswerText words = new AnswerText(new Reader(Locale.ENGLISH));
            Map<String, String> texts = new TreeMap<>();
            for (NumberedEntry entry : numbers.trace().entries()) {
                if (entry.places() > 0) {
                    Ask ask = numbers.asks().get(entry.number() - 1);
                    texts.put(entry.entry().id(), words.of(ask, view.ask(ask)).text());
                }
            }
            return new Texts(texts);
        }

        /** The questions that had another answer before, or were not asked. */
        Set<String> changedSince(Texts before) {
            Set<String> changed = new LinkedHashSet<>();
            new TreeMap<>(byQuestion).forEach((question, text) -> {
                if (!text.equals(before.byQuestion.get(question))) {
                    changed.add(question);
                }
            });
            return changed;
        }
    }

    WrittenNumbers {
        documents = Map.copyOf(documents);
    }

    Optional<Texts> of(String document) {
        return Optional.ofNullable(documents.get(document));
    }

    WrittenNumbers with(Map<String, Texts> others) {
        Map<String, Texts> all = new TreeMap<>(documents);
        all.putAll(others);
        return new WrittenNumbers(all);
    }

    /** Reads what was kept for a project; a damaged file counts as none. */
    static WrittenNumbers read(Path folder, Path project) {
        Map<String, Map<String, String>> found = new TreeMap<>();
        KeptFile.of(folder, project, FILE).read().forEach((key, text) -> {
            int apart = key.indexOf(APART);
            if (apart > 0) {
                found.computeIfAbsent(key.substring(0, apart), name -> new TreeMap<>())
                        .put(key.substring(apart + 1), text);
            }
        });
        Map<String, Texts> documents = new TreeMap<>();
        found.forEach((name, texts) -> documents.put(name, new Texts(texts)));
        return new WrittenNumbers(documents);
    }

    void write(Path folder, Path project) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        documents.forEach((name, document) ->
                document.byQuestion().forEach((question, text) -> texts.put(name + APART + question, text)));
        KeptFile.of(folder, project, FILE).write(texts);
    }
}
