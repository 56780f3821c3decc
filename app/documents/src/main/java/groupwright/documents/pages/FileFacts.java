package groupwright.documents.pages;

import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * What a file says about itself in XMP (ISO 16684-1), equal to its information dictionary as PDF/A-2 (ISO 19005-2) wants.
 *
 * @param title of the document and project
 * @param author who issues it
 * @param subject what it is about
 * @param keywords for search, here the state and the content hash
 * @param creator the program
 * @param producer the library
 * @param language tag after BCP 47
 * @param time date and time after ISO 8601
 */
record FileFacts(
        String title,
        String author,
        String subject,
        String keywords,
        String creator,
        String producer,
        String language,
        String time) {
    private static final String PACKET = """
            <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/">
            <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
             xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
             xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
            <pdfaid:part>2</pdfaid:part><pdfaid:conformance>B</pdfaid:conformance>
            <dc:format>application/pdf</dc:format>
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
            <dc:creator><rdf:Seq><rdf:li>{author}</rdf:li></rdf:Seq></dc:creator>
            <dc:description><rdf:Alt><rdf:li xml:lang="x-default">{subject}</rdf:li></rdf:Alt></dc:description>
            <dc:language><rdf:Bag><rdf:li>{language}</rdf:li></rdf:Bag></dc:language>
            <pdf:Keywords>{keywords}</pdf:Keywords><pdf:Producer>{producer}</pdf:Producer>
            <xmp:CreatorTool>{creator}</xmp:CreatorTool>
            <xmp:CreateDate>{time}</xmp:CreateDate><xmp:ModifyDate>{time}</xmp:ModifyDate>
            </rdf:Description></rdf:RDF></x:xmpmeta>
            <?xpacket end="r"?>""";

    byte[] xmp() {
        Map<String, String> words = Map.of(
                "title", title,
                "author", author,
                "subject", subject,
                "keywords", keywords,
                "creator", creator,
                "producer", producer,
                "language", language,
                "time", time);
        StringBuilder packet = new StringBuilder();
        int at = 0;
        while (at < PACKET.length()) { // in one pass: braces in a title stay braces
            int open = PACKET.indexOf('{', at);
            int close = open < 0 ? -1 : PACKET.indexOf('}', open);
            packet.append(PACKET, at, open < 0 ? PACKET.length() : open);
            if (open >= 0) {
                packet.append(escaped(words.get(PACKET.substring(open + 1, close))));
            }
            at = open < 0 ? PACKET.length() : close + 1;
        }
        return packet.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
