package groupwright.drivetrain.terrain;

import groupwright.drivetrain.terrain.GpxProblem.Kind;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.transform.Source;

/**
 * Reads tracks and routes from GPX 1.0 and 1.1.
 *
 * <p>Elements are matched by local name, extensions too, since each maker has a namespace of his own: {@code power},
 * {@code cad} and {@code cadence} anywhere inside a point count. Document types are refused, external entities are not
 * read. Waypoints, names and everything else are passed over.
 */
public final class GpxReader {
    /** Larger files are refused; 64 MiB hold some 60 hours recorded each second. */
    public static final long MOST_BYTES = 64L << 20;

    private static final int DEEPEST = 100;

    private GpxReader() {}

    /**
     * Reads a file. Cost: O(n) in its size; memory grows with the number of points, not with the text.
     *
     * @param source where the bytes come from, a {@code javax.xml.transform.stream.StreamSource}; closing it is left to
     *     the caller
     * @param bytes size of the file, known before it is opened; above {@link #MOST_BYTES} nothing is read. A source that
     *     turns out longer than that is refused too
     * @return segments and problems; nothing a file can hold makes this throw
     */
    public static GpxReading read(Source source, long bytes) {
        if (bytes > MOST_BYTES) {
            return GpxReading.refused(tooLarge(0));
        }
        try {
            XMLStreamReader xml = factory().createXMLStreamReader(source);
            try {
                return read(xml);
            } finally {
                xml.close();
            }
        } catch (XMLStreamException broken) {
            int line = broken.getLocation() == null
                    ? 0
                    : Math.max(0, broken.getLocation().getLineNumber());
            return GpxReading.refused(new GpxProblem(Kind.NOT_XML, line, 1, ""));
        }
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory(); // the JDK's, whatever lies on the class path
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, false);
        factory.setXMLReporter((message, type, related, place) -> {}); // what is wrong comes as an exception as well
        return factory;
    }

    private static GpxReading read(XMLStreamReader xml) throws XMLStreamException {
        GpxContent content = new GpxContent();
        int depth = 0;
        while (xml.hasNext()) {
            int event = xml.next();
            int line = Math.max(0, xml.getLocation().getLineNumber());
            switch (event) {
                case XMLStreamConstants.DTD -> {
                    return GpxReading.refused(new GpxProblem(Kind.DOCUMENT_TYPE, line, 1, ""));
                }
                case XMLStreamConstants.START_ELEMENT -> {
                    if (depth == 0 && !isGpx(xml)) {
                        return GpxReading.refused(new GpxProblem(Kind.NOT_GPX, line, 1, xml.getLocalName()));
                    }
                    if (++depth > DEEPEST) {
                        return GpxReading.refused(new GpxProblem(Kind.NOT_GPX, line, 1, "nested too deep"));
                    }
                    content.start(xml, line);
                }
                case XMLStreamConstants.END_ELEMENT -> {
                    depth--;
                    content.end(xml.getLocalName());
                }
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE ->
                    content.text(xml);
                default -> {
                    // comments and processing instructions say nothing about the ground
                }
            }
            if (xml.getLocation().getCharacterOffset() > MOST_BYTES || content.isFull()) {
                return GpxReading.refused(tooLarge(line));
            }
        }
        return content.reading();
    }

    private static boolean isGpx(XMLStreamReader xml) {
        String version = xml.getAttributeValue(null, "version");
        return xml.getLocalName().equals("gpx") && ("1.0".equals(version) || "1.1".equals(version));
    }

    private static GpxProblem tooLarge(int line) {
        return new GpxProblem(Kind.TOO_LARGE, line, 1, "more than 64 MiB or 2 million points");
    }
}
