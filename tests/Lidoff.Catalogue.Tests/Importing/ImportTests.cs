using System.Text;
using Lidoff.Catalogue.Importing;
using Lidoff.Catalogue.Parts;
using Lidoff.Catalogue.Tables;
using Lidoff.Numbers.Failing;

namespace Lidoff.Catalogue.Tests.Importing;

public sealed class ImportTests
{
    private const string FullHeader =
        "part,maker,class,package,body_l_mm,body_w_mm,height_mm,pitch_mm,pins,pinout,interface,i2c_addresses,id_register,id_value,marks,"
        + "supply_min_v,supply_max_v,introduced,idle_current_a,active_current_a,price,source,confidence";

    [Fact]
    public void Every_column_of_the_contract_arrives()
    {
        Assert.Equal(FullHeader, string.Join(',', Columns.Contract));
        var row = Assert.Single(Read(
            FullHeader + "\nOWN-1,Own Works,charger,QFN-16,3.0,3.0,0.75,0.5,16,1=VDD:power_in;2=GND:power_in,I2C,0x6a 0x6b,0x0a,0x20/0xf0,OW1*/????|OW-1,"
            + "2.7,5.5,2019-04,1.5e-6,0.002,0.80 EUR at 100,own sheet,published\n").Value.Rows);
        Assert.Equal(new RowOrigin("mine.csv", 2), row.Origin);
        Assert.Equal(("OWN-1", "Own Works", "charger", "QFN-16"), (row.Part, row.Maker, row.Class, row.Package));
        Assert.Equal((3.0, 3.0, 0.75, 0.5, 16), (row.LengthMm, row.WidthMm, row.HeightMm, row.PitchMm, row.Pins));
        Assert.Equal([new Pin("1", "VDD", "power_in"), new Pin("2", "GND", "power_in")], row.Pinout);
        Assert.Equal([0x6a, 0x6b], row.Addresses);
        Assert.Equal((0x0a, 0x20L, 0xf0L), (row.IdRegister, row.IdValue, row.IdMask));
        Assert.Equal(["OW1*/????", "OW-1"], row.Marks);
        Assert.Equal((2.7, 5.5, 2019, 1.5e-6, 0.002), (row.SupplyLeast, row.SupplyMost, row.Introduced, row.IdleCurrent, row.ActiveCurrent));
        Assert.Equal(("0.80 EUR at 100", "own sheet", Confidence.Published), (row.Price, row.Source, row.Confidence));
    }

    [Fact]
    public void Any_column_may_be_empty_or_absent()
    {
        var row = Assert.Single(Read("part\nOWN-1\n").Value.Rows);
        Assert.Equal(("OWN-1", "", null, Confidence.Memory), (row.Part, row.Maker, row.Pins, row.Confidence));
        Assert.Empty(Read(FullHeader + "\nOWN-1" + new string(',', 22) + "\n").Value.Notes);
    }

    [Theory]
    [InlineData("part;body_l_mm;pins\nOWN-1;3,5;8\n")]
    [InlineData("part\tbody_l_mm\tpins\nOWN-1\t3.5\t8\n")]
    [InlineData("part|body_l_mm|pins\r\nOWN-1|3.5|8\r\n")]
    [InlineData("\uFEFFPart,Body_L_mm,Pins\r\n\"OWN-1\",3.5,8")]
    [InlineData("{\"part\":\"OWN-1\",\"body_l_mm\":3.5,\"pins\":8}\n")]
    public void Separators_and_decimal_commas_are_seen(string text)
    {
        var row = Assert.Single(Read(text).Value.Rows);
        Assert.Equal(("OWN-1", 3.5, 8), (row.Part, row.LengthMm, row.Pins));
    }

    [Fact]
    public void A_number_that_could_be_two_is_asked_for_and_the_answer_is_taken()
    {
        const string Text = "part;body_l_mm\nOWN-1;5,275\n";
        Assert.Equal("Line 2: body_l_mm is \"5,275\": thousands or decimals? Say --decimal comma or --decimal point.", Say(Read(Text)));
        Assert.Equal(5.275, Read(Text, new ImportOptions(DecimalComma: true)).Value.Rows[0].LengthMm);
    }

    [Theory]
    [InlineData("body_l_mm", "6000", "Line 2: body_l_mm is \"6000\"; expected 0.1 to 200 mm. Is it in another unit?")]
    [InlineData("height_mm", "850", "Line 2: height_mm is \"850\"; expected 0.05 to 60 mm. Is it in another unit?")]
    [InlineData("pitch_mm", "400", "Line 2: pitch_mm is \"400\"; expected 0.1 to 30 mm. Is it in another unit?")]
    [InlineData("idle_current_a", "5", "Line 2: idle_current_a is \"5\"; expected 0 to 1 A. Is it in another unit?")]
    [InlineData("supply_max_v", "3300", "Line 2: supply_max_v is \"3300\"; expected 0 to 1000 V. Is it in another unit?")]
    [InlineData("body_l_mm", "NaN", "Line 2: body_l_mm is \"NaN\", which is not a finite number.")]
    [InlineData("body_l_mm", "1e999", "Line 2: body_l_mm is \"1e999\", which is not a finite number.")]
    [InlineData("body_l_mm", "-Infinity", "Line 2: body_l_mm is \"-Infinity\", which is not a finite number.")]
    [InlineData("pins", "8.5", "Line 2: pins is \"8.5\", which is not a whole number.")]
    [InlineData("pins", "0", "Line 2: pins is \"0\"; expected 1 to 5000. Is it in another unit?")]
    [InlineData("i2c_addresses", "0x80", "Line 2: bus address \"0x80\" is not a 7-bit address. An 8-bit write address is twice the 7-bit one.")]
    [InlineData("i2c_addresses", "0x6a x", "Line 2: bus address \"x\" is not a 7-bit address. An 8-bit write address is twice the 7-bit one.")]
    [InlineData("id_register", "who", "Line 2: id_register is \"who\", which is not a number such as 0x0f.")]
    [InlineData("pinout", "VDD", "Line 2: \"VDD\" in the pin-out is no pin. Write 1=VDD:power_in;2=GND:power_in.")]
    [InlineData("marks", "*", "Line 2: a mark pattern of nothing but * and ? fits everything.")]
    [InlineData("introduced", "soon", "Line 2: introduced is \"soon\"; expected 1958 to 2100. Is it in another unit?")]
    [InlineData("confidence", "sure", "Line 2: confidence is \"sure\"; expected published, derived or memory.")]
    public void A_wrong_cell_is_refused_with_its_line(string column, string text, string sentence) =>
        Assert.Equal(sentence, Say(Read($"part;{column}\nOWN-1;{text}\n")));

    [Fact]
    public void One_refused_row_refuses_the_file_and_all_faults_are_told_at_once()
    {
        var read = Read("part,body_l_mm,i2c_addresses\nOWN-1,3,0x10\n,3,\nOWN-3,9999,0x90\nOWN-1,3,0x10\n");
        Assert.Equal(
            [
                "Line 3 names no part.",
                "Line 4: body_l_mm is \"9999\"; expected 0.1 to 200 mm. Is it in another unit?",
                "Line 4: bus address \"0x90\" is not a 7-bit address. An 8-bit write address is twice the 7-bit one.",
                "Line 5 says word for word what line 2 says.",
            ],
            read.Faults.Select(f => f.Say));
        Assert.Equal(["line 3", "line 4", "line 4", "line 5"], read.Faults.Select(f => f.Where));
        var result = ImportResult.Of(Shipped.Parts, read);
        Assert.Equal((0, 0, 4), (result.Added, result.Merged, result.Refused.Count));
    }

    [Fact]
    public void Added_and_merged_are_counted()
    {
        var result = ImportResult.Of(Shipped.Parts, Read("part,package\nOWN-1,QFN-16\nown 1,QFN-20\nnRF52832,\nnRF52832-QFAA,QFN-48\n"));
        Assert.Equal((1, 3, 0), (result.Added, result.Merged, result.Refused.Count));
    }

    [Fact]
    public void Unknown_columns_are_named_and_left_out() =>
        Assert.Equal(["mine.csv: the column \"colour\" is not known here and was left out."], Read("part,colour\nOWN-1,red\n").Value.Notes);

    [Theory]
    [InlineData("", "mine.csv holds no part.")]
    [InlineData("part,pins\n", "mine.csv holds no part.")]
    [InlineData("name,pins\nX,8\n", "mine.csv has no header line with the column \"part\".")]
    [InlineData("part,part\nX,Y\n", "The column part stands twice in the header.")]
    [InlineData("part,pins\n\"X,8\n", "The quote opened on line 2 is never closed.")]
    [InlineData("part,pins\nX,8,3.3 V\n", "Line 2 has 3 cells, the header has 2. Is a separator inside a cell that is not quoted?")]
    [InlineData("{\"part\":\"X\",\"part\":\"Y\"}", "Line 1: the key part stands twice.")]
    [InlineData("{\"part\":\"X\",\"pins\":NaN}", "Line 1 is not one JSON object: it breaks off at byte 20.")]
    [InlineData("{\"part\":\"X\",\"pins\":{}}", "Line 1: pins is neither a text nor a number.")]
    [InlineData("{\"part\":\"X\"} {}", "Line 1 is not one JSON object: it breaks off at byte 14.")]
    [InlineData("{\"part\":\"X\"", "Line 1 is not one JSON object: it breaks off at byte 12.")]
    [InlineData("(footprint \"X\")", "mine.csv is neither a table with a header, nor lines of JSON, nor a symbol library.")]
    public void What_is_no_table_is_a_sentence(string text, string sentence) => Assert.Contains(sentence, Read(text).Faults.Select(f => f.Say));

    [Fact]
    public void Bytes_that_are_no_text_are_a_sentence()
    {
        Assert.Equal("mine.csv is not UTF-8 text.", Say(ImportReader.Read(new MemoryStream([0x70, 0xff, 0xfe, 0x00]), "mine.csv")));
        Assert.Equal("mine.csv is not UTF-8 text.", Say(ImportReader.Read(new MemoryStream("part\nA\0B\n"u8.ToArray()), "mine.csv")));
    }

    [Fact]
    public void A_line_without_end_is_a_sentence() =>
        Assert.Equal("Line 2 is longer than 1000000 characters.", Say(Read("part\n" + new string('A', 1_000_001))));

    [Fact]
    public void A_flood_of_faults_is_cut_and_counted()
    {
        var read = Read("part,pins\n" + string.Concat(Enumerable.Range(0, 1000).Select(i => $"P{i},x\n")));
        Assert.Equal(ImportLimits.Faults + 1, read.Faults.Count);
        Assert.Equal("mine.csv has 800 more faults that are not listed.", read.Faults[^1].Say);
    }

    // What the catalogue says of itself can be brought back in: a round trip through the columns of the contract.
    [Fact]
    public void A_part_written_as_json_comes_back_the_same()
    {
        const string Line = """{"part":"OWN-1","pins":16,"pinout":"1=VDD:power_in;2=~{RST}:input","i2c_addresses":["0x6a","0x6b"],"marks":"OW1*","confidence":"derived","maker":null}""";
        var row = Assert.Single(Read(Line).Value.Rows);
        Assert.Equal("1=VDD:power_in;2=~{RST}:input", PinoutText.Write(row.Pinout));
        Assert.Equal([0x6a, 0x6b], row.Addresses);
        Assert.Equal(("", Confidence.Derived), (row.Maker, row.Confidence));
    }

    private static string Say<T>(Outcome<T> outcome) => Assert.Single(outcome.Faults).Say;

    private static Outcome<ImportedRows> Read(string text, ImportOptions? options = null) =>
        ImportReader.Read(new MemoryStream(Encoding.UTF8.GetBytes(text)), "mine.csv", options);
}
