/**
 * A project kept in a folder of small files, saved so that every edit is wholly there or wholly absent, whatever happens.
 *
 * <p>Layout: {@code project.json} in the root and one record a file, {@code FOLDER/ID.json}; other folders are left
 * alone. Ours is the folder {@code .groupwright}:
 *
 * <pre>
 * lock            the writer's lock, holding the number of its process
 * saving          the new version of a single file on its way to its place
 * staging/        an edit of several files being written; not committed, thrown away when found
 * journal/        a committed edit being put in place; counts as saved from here on
 * conflict-001/   a committed edit that met a file changed by somebody else; kept for the user
 * </pre>
 *
 * <p>An edit folder ({@code staging}, {@code journal}, {@code conflict-…}) holds the new version of each file whole,
 * named {@code FOLDER-ID.json}, and {@code manifest}, lines of ASCII ended by a line feed:
 *
 * <pre>
 * groupwright journal 1
 * OLD NEW requirements/R-001.json      SHA-256 in hexadecimal before and after, - where there is no file
 * …
 * checksum SHA                         SHA-256 of all bytes above this line
 * </pre>
 *
 * <p>All of {@code staging} is forced to disk before the renaming to {@code journal} commits it. Putting an edit in place
 * only renames: a target with the old version is replaced by the file in the journal, a target with the new version
 * is done, anything else is a conflict. The manifest is deleted, and that forced, once all targets are forced.
 */
package groupwright.definition.storage;
