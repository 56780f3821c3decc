package groupwright.workbench.notation;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Which of many things somebody means by what is typed so far: the id itself, then ids that begin so, numbers of ids, titles
 * that begin so, titles with a word that begins so, titles that hold it, and last the words about it. All words typed must be
 * found. Accents and capitals do not count. Equal ranks keep their order. O(things · words).
 */
public final class Ranking {
    private static final int NOT_FOUND = Integer.MAX_VALUE;

    private Ranking() {}

    /** Those that fit, best first; all of them while nothing is typed. */
    public static List<Found> rank(String typed, List<Found> things) {
        String query = plain(typed.strip());
        if (query.isEmpty()) {
            return List.copyOf(things);
        }
        record Ranked(Found found, int rank) {}
        List<Ranked> ranked = new ArrayList<>();
        for (Found thing : things) {
            int rank = rank(query, thing);
            if (rank != NOT_FOUND) {
                ranked.add(new Ranked(thing, rank));
            }
        }
        ranked.sort(Comparator.comparingInt(Ranked::rank));
        return ranked.stream().map(Ranked::found).toList();
    }

    private static int rank(String query, Found thing) {
        String id = plain(thing.id());
        String title = plain(thing.title());
        if (query.equals(id) || query.equals(id + " " + title)) {
            return 0;
        } else if (id.startsWith(query)) {
            return 1;
        } else if (query.matches("[0-9]+") && number(id).startsWith(query)) {
            return 2;
        } else if (title.startsWith(query)) {
            return 3;
        }
        int worst = 0;
        for (String word : query.split("\\s+")) {
            worst = Math.max(worst, ofWord(word, id, title, plain(thing.about())));
        }
        return worst;
    }

    private static int ofWord(String word, String id, String title, String about) {
        if ((" " + title.replaceAll("[^\\p{L}\\p{N}]+", " ")).contains(" " + word)) {
            return 4;
        } else if (title.contains(word) || id.contains(word)) {
            return 5;
        }
        return about.contains(word) ? 6 : NOT_FOUND;
    }

    private static String number(String id) {
        return id.substring(id.indexOf('-') + 1).replaceFirst("^0+(?=.)", "");
    }

    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT);
    }
}
