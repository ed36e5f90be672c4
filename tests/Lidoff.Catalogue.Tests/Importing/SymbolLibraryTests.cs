using System.Text;
using CsCheck;
using Lidoff.Catalogue.Importing;
using Lidoff.Catalogue.Parts;
using Lidoff.Numbers.Failing;

namespace Lidoff.Catalogue.Tests.Importing;

/// <summary>Libraries written for these tests after the published description of the format: no file of another project is used.</summary>
public sealed class SymbolLibraryTests
{
    private const string Library = """
        (kicad_symbol_lib (version 20211014) (generator own)
          (symbol "OWN-CHG" (in_bom yes) (on_board yes)
            (property "Reference" "U" (id 0) (at 0 0 0))
            (property "Value" "OWN-CHG" (id 1) (at 0 0 0))
            (property "Footprint" "Package_DFN_QFN:QFN-16-1EP_3x3mm_P0.5mm" (id 2) (at 0 0 0))
            (property "ki_description" "battery charger, with a \"quoted\" word" (id 5) (at 0 0 0))
            (symbol "OWN-CHG_0_1" (rectangle (start -5 5) (end 5 -5)))
            (symbol "OWN-CHG_1_1"
              (pin power_in line (at 0 0 0) (length 2.54) (name "VDD" (effects (font (size 1 1)))) (number "1" (effects (font (size 1 1)))))
              (pin open_collector line (at 0 0 0) (length 2.54) (name "~{INT}") (number "2"))
              (pin bidirectional line (at 0 0 0) (length 2.54) (name "SDA") (number "3"))))
          (symbol "OWN-CHG-B" (extends "OWN-CHG")
            (property "Value" "OWN-CHG-B" (id 1) (at 0 0 0))
            (property "Footprint" "" (id 2) (at 0 0 0))
            (property "ki_fp_filters" "SOIC*3.9x4.9mm*P1.27mm* DIP*" (id 6) (at 0 0 0)))
          (symbol "GND" (power) (symbol "GND_1_1" (pin power_in line (name "GND") (number "1"))))
          (symbol "LOGO" (symbol "LOGO_0_1" (circle))))
        """;

    [Fact]
    public void Parts_pins_packages_and_descriptions_are_read()
    {
        var read = Read(Library).Value;
        Assert.Equal(["OWN-CHG", "OWN-CHG-B"], read.Rows.Select(r => r.Part));
        var row = read.Rows[0];
        Assert.Equal(("QFN-16-1EP_3x3mm_P0.5mm", "battery charger, with a \"quoted\" word", Confidence.Derived), (row.Package, row.Class, row.Confidence));
        Assert.Equal([new Pin("1", "VDD", "power_in"), new Pin("2", "~{INT}", "open_collector"), new Pin("3", "SDA", "bidirectional")], row.Pinout);
        Assert.Equal(new RowOrigin("own.kicad_sym", 2), row.Origin);
        Assert.Equal(["own.kicad_sym: the symbol LOGO has no pins and was left out."], read.Notes);
    }

    [Fact]
    public void A_symbol_takes_over_what_it_extends()
    {
        var row = Read(Library).Value.Rows[1];
        Assert.Equal(3, row.Pinout.Count);
        Assert.Equal("battery charger, with a \"quoted\" word", row.Class);
        Assert.Equal("Package_DFN_QFN:QFN-16-1EP_3x3mm_P0.5mm"[16..], row.Package);
    }

    [Theory]
    [InlineData("(kicad_symbol_lib (symbol \"A\" (extends \"B\")))", "Line 1: A extends B, which is not in this file.")]
    [InlineData("(kicad_symbol_lib\n(symbol \"A\" (extends \"B\"))\n(symbol \"B\" (extends \"A\")))", "Line 2: A extends itself through other symbols.")]
    [InlineData("(kicad_symbol_lib\n(symbol \"A\")\n(symbol \"A\"))", "Line 3 says word for word what line 2 says.")]
    [InlineData("(kicad_symbol_lib\n(symbol \"A\"", "Line 2: the bracket opened here is never closed; the file may be cut short.")]
    [InlineData("(kicad_symbol_lib\n(symbol \"A))", "The quote opened on line 2 is never closed.")]
    [InlineData("(kicad_symbol_lib))", "Line 1: something follows the closing bracket of the file.")]
    [InlineData("(kicad_symbol_lib) word", "Line 1: something follows the closing bracket of the file.")]
    [InlineData("(kicad_symbol_lib)", "own.kicad_sym holds no part.")]
    public void A_broken_library_is_a_sentence(string text, string sentence) => Assert.Contains(sentence, Read(text).Faults.Select(f => f.Say));

    [Theory]
    [InlineData(65)]
    [InlineData(1_000_000)]
    public void A_tower_of_brackets_is_a_sentence_and_no_crash(int depth) =>
        Assert.Equal("Line 1: the brackets are nested deeper than 64 levels.", Assert.Single(Read(new string('(', depth)).Faults).Say);

    [Fact]
    public void A_long_chain_of_parents_ends()
    {
        var text = "(kicad_symbol_lib " + string.Concat(Enumerable.Range(0, 500).Select(i => $"(symbol \"P{i}\" (extends \"P{i + 1}\"))")) + "(symbol \"P500\" (pin input line (name \"A\") (number \"1\"))))";
        Assert.Equal(501, Read(text).Value.Rows.Count);
    }

    [Fact]
    public void Any_cut_or_scrambled_library_gives_rows_or_sentences()
    {
        Gen.Select(Gen.Int[0, Library.Length], Gen.Int[0, Library.Length - 1], Gen.Char["()\"\\ \n;=:A"]).Sample(
            (cut, at, mark) =>
            {
                var text = string.Concat(Library.AsSpan(0, at), mark.ToString(), Library.AsSpan(at + 1))[..cut];
                var read = Read(text);
                return read.Ok ? read.Value.Rows.Count > 0 : read.Faults.All(f => f.Say.Length > 0);
            },
            iter: 500);
    }

    private static Outcome<ImportedRows> Read(string text) => ImportReader.Read(new MemoryStream(Encoding.UTF8.GetBytes(text)), "own.kicad_sym");
}
