package groupwright.workbench.notation;

/**
 * Something that can be found by typing.
 *
 * @param id as it stands in files
 * @param title what people call it
 * @param unit its unit; may be empty
 * @param about more words it can be found by, shown in small; may be empty
 */
public record Found(String id, String title, String unit, String about) {}
