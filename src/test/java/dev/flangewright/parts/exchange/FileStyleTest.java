package dev.flangewright.parts.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.core.io.ByteArrayResource;

/** A file read and written again is the same, however its writer set it out. */
class FileStyleTest {

  private static final String HEADER = Loft.CONTOURS_HEADER;
  private static final String QUOTED =
      """
      "part_number","flange","station","x_mm","y_mm","bend_angle_deg","width_mm"
      "TW-1","outer","1","0","2","90",""
      """;

  @ParameterizedTest
  @ValueSource(
      strings = {
        HEADER + "\nTW-1,outer,1,0.10,2,90,\n",
        HEADER + "\r\nTW-1,outer,1,0.10,2,90,\r\nTW-1,outer,2,9,2,90.0,20\r\n",
        HEADER + "\rTW-1,outer,1,0.10,2,90,\r",
        HEADER + "\nTW-1,outer,1,0.10,2,90,",
        "\ufeff" + HEADER + "\r\nTW-1,outer,1,0.10,2,90,\r\n",
        HEADER + "\n\"TW-1, left\",\"the \"\"outer\"\"\",1,0,2,90,\nTW-2,outer,1,0,2,90,\n",
        QUOTED,
        HEADER + "\n\"TW-1\",\"outer\",1,0,2,90,\n\"TW-2\",\"outer\",1,0,2,90,\n",
        "flange,part_number,station,x_mm,y_mm,bend_angle_deg\nouter,TW-1,1,0,2,90\n",
        HEADER,
        HEADER + "\n",
      })
  void it_comes_back_byte_for_byte(String text) throws IOException {
    assertThat(readAndWritten(text)).isEqualTo(text);
    assertThat(oddLine(text)).isZero();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        HEADER + "\nTW-1,outer,1,0,2,90,\r\n",
        HEADER + "\n\"TW-1\",outer,1,0,2,90,\nTW-1,outer,2,5,2,90,\n",
        HEADER + "\nTW-1,outer,1,0,2,90,\n\n",
      })
  void a_file_without_one_style_is_told_apart(String text) {
    assertThat(oddLine(text)).isPositive();
  }

  @Test
  void a_style_survives_being_stored_in_forty_characters() {
    FileStyle style = read("\ufeff" + HEADER.replace("x_mm", "\"x_mm\""), new ArrayList<>());

    assertThat(FileStyle.of(style.text(), CsvFile.CONTOURS)).isEqualTo(style);
    assertThat(FileStyle.usual(CsvFile.REGISTER).text()).hasSizeLessThanOrEqualTo(40);
    FileStyle longest =
        new FileStyle(true, "\n", true, List.of(), -1 >>> 15, -1 >>> 15)
            .withAllColumns(CsvFile.REGISTER);
    assertThat(longest.text()).hasSizeLessThanOrEqualTo(40);
    assertThat(FileStyle.of(longest.text(), CsvFile.REGISTER)).isEqualTo(longest);
  }

  @Test
  void a_column_the_file_did_without_is_added_when_needed() {
    FileStyle style = read(HEADER.replace(",width_mm", ""), new ArrayList<>());

    assertThat(style.order()).hasSize(6);
    assertThat(style.withAllColumns(CsvFile.CONTOURS).order()).hasSize(7);
  }

  private static String readAndWritten(String text) throws IOException {
    List<CsvRow> rows = new ArrayList<>();
    FileStyle style = read(text, rows);
    StringWriter out = new StringWriter();
    CsvWriter csv =
        new CsvWriter(CsvFile.CONTOURS, FileStyle.of(style.text(), CsvFile.CONTOURS), out);
    for (CsvRow row : rows) {
      csv.row(row.cells());
    }
    csv.end();
    return out.toString();
  }

  private static FileStyle read(String text, List<CsvRow> rows) {
    FileStyle style = csv(text, rows).style();
    assertThat(style).isNotNull();
    return style;
  }

  private static int oddLine(String text) {
    return csv(text, new ArrayList<>()).oddLine();
  }

  private static CsvRead csv(String text, List<CsvRow> rows) {
    Problems problems = new Problems();
    CsvRead read =
        new CsvReader(CsvFile.CONTOURS, problems, Progress.UNSEEN)
            .read(new ByteArrayResource(text.getBytes(StandardCharsets.UTF_8)), rows::add);
    assertThat(problems.inOrder()).isEmpty();
    return read;
  }
}
