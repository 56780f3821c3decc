package groupwright.documents.pages;

import java.awt.geom.Rectangle2D;
import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.pdmodel.PDDestinationNameTreeNode;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDNameTreeNode;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.apache.pdfbox.text.TextPosition;

/** A produced file read back by another library. */
final class ReadPdf implements Closeable {
    private final PDDocument document;

    ReadPdf(byte[] bytes) throws IOException {
        this.document = Loader.loadPDF(bytes);
    }

    PDDocument document() {
        return document;
    }

    /** All text of a page, from 1, by place. */
    String text(int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }

    /** Text of the wide column. */
    String bodyText(int page) throws IOException {
        return region(page, new Rectangle2D.Double(40, 52, PageGeometry.TEXT_WIDTH + 22, 740));
    }

    /** Text of the column beside it. */
    String marginText(int page) throws IOException {
        return region(page, new Rectangle2D.Double(PageGeometry.TRACE_LEFT - 2, 52, 130, 740));
    }

    private String region(int page, Rectangle2D area) throws IOException {
        return regions(page, List.of(area)).get(0);
    }

    /** Text whose signs start in each of some rectangles. */
    List<String> regions(int page, List<? extends Rectangle2D> areas) throws IOException {
        PDFTextStripperByArea stripper = new PDFTextStripperByArea();
        stripper.setSortByPosition(true);
        for (int i = 0; i < areas.size(); i++) {
            stripper.addRegion(Integer.toString(i), areas.get(i));
        }
        stripper.extractRegions(document.getPage(page - 1));
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < areas.size(); i++) {
            texts.add(stripper.getTextForRegion(Integer.toString(i)));
        }
        return texts;
    }

    /** Advances of the signs of a word that stands alone, in hundredths of a point; the narrowest digit as drawn differs by 185. */
    List<Double> advances(int page, String word) throws IOException {
        List<Double> advances = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) {
                if (text.equals(word)) {
                    positions.forEach(position -> advances.add(Math.rint(position.getWidth() * 100)));
                }
            }
        };
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        stripper.getText(document);
        return advances;
    }

    static List<String> words(String text) {
        return List.of(text.strip().split("\\s+"));
    }

    /** Names of the places that links on a page lead to. */
    Set<String> linksOn(int page) throws IOException {
        Set<String> names = new TreeSet<>();
        Map<String, PDPageDestination> places = places();
        for (PDAnnotation annotation : document.getPage(page - 1).getAnnotations()) {
            if (annotation instanceof PDAnnotationLink link && link.getAction() instanceof PDActionGoTo go) {
                COSArray target = ((PDPageDestination) go.getDestination()).getCOSObject();
                places.forEach((name, place) -> {
                    if (place.getCOSObject().toList().equals(target.toList())) {
                        names.add(name);
                    }
                });
            }
        }
        return names;
    }

    /** Page, from 1, of a named place. */
    int pageOf(String name) throws IOException {
        return document.getPages().indexOf(places().get(name).getPage()) + 1;
    }

    private Map<String, PDPageDestination> places() throws IOException {
        PDDestinationNameTreeNode tree =
                document.getDocumentCatalog().getNames().getDests();
        Map<String, PDPageDestination> places = new TreeMap<>();
        collect(tree, places);
        return places;
    }

    private static void collect(PDNameTreeNode<PDPageDestination> node, Map<String, PDPageDestination> places)
            throws IOException {
        if (node.getNames() != null) {
            places.putAll(node.getNames());
        }
        if (node.getKids() != null) {
            for (PDNameTreeNode<PDPageDestination> kid : node.getKids()) {
                collect(kid, places);
            }
        }
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
