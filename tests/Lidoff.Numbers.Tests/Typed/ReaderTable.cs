using System.Globalization;
using CsCheck;
using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Tests.Typed;

/// <summary>
/// What every reader of typed text is held to: a table of what it reads, a table of what it says where it does not, that its
/// written form reads back as the same, and that no text whatever makes it throw.
/// </summary>
public abstract class ReaderTable<T>
{
    private const string Nasty = "0123456789.,'±+-−–eExX%()[]?* \t\u00A0\u202FkKMRmuµμnpGTVAhWFHΩ\u2126°C/·^²⁻³АΟ٣۴५０Ａ\uD800\uDC00\u0000\u200B#\u066B\u221E~<>";

    protected abstract Outcome<T> Read(string? text);

    /// <summary>The form in which the table writes what was read; it must read back as the same.</summary>
    protected abstract string Write(T value);

    protected abstract IEnumerable<(string Typed, string Written)> Good { get; }

    protected abstract IEnumerable<(string? Typed, string Say)> Bad { get; }

    protected static string R(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    [Fact]
    public void Reads_what_people_type()
    {
        var wrong = Good.Select(row => (row.Typed, row.Written, Read: Shown(Read(row.Typed)))).Where(row => row.Read != row.Written);
        Assert.Equal("", string.Join("\n", wrong.Select(row => $"{row.Typed}: expected {row.Written}, read {row.Read}")));
    }

    [Fact]
    public void What_it_writes_reads_back_as_the_same()
    {
        var wrong = Good.Select(row => (row.Written, Read: Shown(Read(row.Written)))).Where(row => row.Read != row.Written);
        Assert.Equal("", string.Join("\n", wrong.Select(row => $"{row.Written} came back as {row.Read}")));
    }

    [Fact]
    public void Says_what_is_wrong_or_asks()
    {
        var wrong = Bad.Select(row => (row.Typed, row.Say, Read: Shown(Read(row.Typed)))).Where(row => row.Read != row.Say);
        Assert.Equal("", string.Join("\n", wrong.Select(row => $"{row.Typed}: expected {row.Say} but {row.Read}")));
    }

    [Fact]
    public void No_text_makes_it_throw()
    {
        var text = Gen.OneOf(Gen.String[Gen.Char[Nasty], 0, 14], Gen.String, Gen.String[Gen.Char, 0, 300]);
        text.Sample(typed => Read(typed).Ok || Read(typed).Faults.All(fault => fault.Say.Length > 0), iter: 3000);
    }

    [Fact]
    public void Every_fault_names_the_place()
    {
        Assert.All(Bad, row => Assert.All(Read(row.Typed).Faults, fault => Assert.Equal("here", fault.Where)));
    }

    private string Shown(Outcome<T> outcome) => outcome.TryValue(out var value) ? Write(value) : string.Join(" | ", outcome.Faults.Select(fault => fault.Say));
}
