using Lidoff.Naming.Asking;

namespace Lidoff.Naming.Tests.Asking;

public class EvidenceReaderTests
{
    // The line that docs/contracts.md shows.
    private const string Contract = """
        {"id":"17","evidence":{"mark_lines":["N52832","QFAA?0"],"body_mm":[6.0,6.0],"u_mm":0.05,"height_mm":0.85,"pins":48,"pitch_mm":0.4,"package":"QFN","bus":{"type":"i2c","address":"0x68"},"id_register":{"reg":"0x75","value":"0x71"},"role":"beside a 32 MHz crystal and an antenna","class":null,"supply_v":3.0,"ground_pins":[13,45],"date_code":"1701"}}
        """;

    [Fact]
    public void The_line_of_the_contract_is_read_whole()
    {
        var item = EvidenceReader.Read(Contract, 1);
        var read = item.Line.Value.Evidence;
        Assert.Equal("17", item.Id);
        Assert.Empty(item.Line.Value.Remarks);
        Assert.Equal("N52832 QFAA?0", read.Mark!.Best());
        Assert.Equal((6.0, 6.0), read.BodyMm);
        Assert.Equal(0x68, read.Bus!.Address);
        Assert.Equal(new RegisterFact(0x75, 0x71), read.Identity);
        Assert.Null(read.Class);
        Assert.Equal(["13", "45"], read.GroundPins);
        Assert.Equal("1701", read.DateCode);
    }

    [Fact]
    public void Every_key_may_be_missing()
    {
        var read = EvidenceReader.Read("""{"evidence":{}}""", 3);
        Assert.Equal("3", read.Id);
        Assert.True(read.Line.Value.Evidence.IsEmpty);
    }

    [Fact]
    public void Unknown_keys_are_named_and_left_out()
    {
        var read = EvidenceReader.Read("""{"id":1,"evidence":{"pins":8,"colour":"black"},"note":"x"}""", 1);
        Assert.Equal(["'note' is not a key of evidence; it was left out.", "'colour' is not a key of evidence; it was left out."], read.Line.Value.Remarks);
    }

    [Fact]
    public void All_faults_of_a_line_come_at_once()
    {
        var read = EvidenceReader.Read("""{"id":"a","evidence":{"pins":"many","body_mm":[1],"package":"blob","bus":{"address":"0x80"},"mark_lines":[[["A",2]]]}}""", 1);
        Assert.Equal(["evidence.body_mm", "evidence.bus.address", "evidence.mark_lines[0][0]", "evidence.package", "evidence.pins"], read.Line.Faults.Select(f => f.Where));
        Assert.Equal("'pins' should be a whole number of pins, 1 to 5000.", read.Line.Faults[^1].Say);
    }

    [Theory]
    [InlineData("""{"id":"a","evidence":{"pins":8,"pins":9}}""")]
    [InlineData("""{"id":"a","evidence":{"supply_v":NaN}}""")]
    [InlineData("""{"id":"a","evidence":{"supply_v":Infinity}}""")]
    public void Twice_the_same_key_and_what_is_no_number_are_refused_with_line_and_place(string line)
    {
        var read = EvidenceReader.Read(line, 12);
        Assert.StartsWith("line 12, byte ", read.Line.Faults[0].Where, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("7")]
    [InlineData("""{"id":"a"}""")]
    public void A_line_without_evidence_is_refused(string line) => Assert.False(EvidenceReader.Read(line, 1).Line.Ok);

    [Fact]
    public void A_number_too_large_to_hold_is_refused() =>
        Assert.False(EvidenceReader.Read("""{"evidence":{"supply_v":1e999}}""", 1).Line.Ok);

    [Fact]
    public void A_mark_line_may_be_a_lattice()
    {
        var read = EvidenceReader.Read("""{"evidence":{"mark_lines":["AB",[["N",0.9],["H",0.05]]]}}""", 1);
        Assert.False(read.Line.Ok);
        read = EvidenceReader.Read("""{"evidence":{"mark_lines":["AB",[[["N",0.9],["H",0.05]],[]]]}}""", 1);
        var line = read.Line.Value.Evidence.Mark!.Lines[1];
        Assert.Equal(2, line.Count);
        Assert.Equal(0.05, line[0].Rest, 12);
        Assert.Equal("AB N?", read.Line.Value.Evidence.Mark!.Best());
    }

    [Fact]
    public void Letters_of_another_alphabet_are_read_as_latin_and_told()
    {
        var read = EvidenceReader.Read("""{"evidence":{"mark_lines":["ВМА"]}}""", 1).Line.Value;
        Assert.Equal([EvidenceSentences.OtherAlphabet("ВМА")], read.Remarks);
    }
}
