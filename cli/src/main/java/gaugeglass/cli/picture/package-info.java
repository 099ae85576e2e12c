/** Pictures of what was seen, as plain shapes that a page and a sheet of paper can both show; start at {@link gaugeglass.cli.picture.PicturesSeen}. */
@org.jspecify.annotations.NullMarked
package gaugeglass.cli.picture;
