using System.Globalization;

namespace Lidoff.Tests.Demo;

/// <summary>
/// Reads a value change dump of one-bit wires, after IEEE 1364 clause 18: declarations up to <c>$enddefinitions</c>, then <c>#time</c> and
/// <c>0id</c> or <c>1id</c>. Written for the tests from the format's description; it shares nothing with the recorder.
/// </summary>
internal sealed class ValueChanges
{
    /// <summary>Nanoseconds of one step of time.</summary>
    public double StepNs { get; private init; }

    /// <summary>Per wire by its name: every change in order, ns and level.</summary>
    public Dictionary<string, List<(double Ns, bool High)>> Wires { get; } = new(StringComparer.Ordinal);

    public static ValueChanges Read(string text)
    {
        var words = new Queue<string>(text.Split((char[])[' ', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
        var (step, names) = (0.0, new Dictionary<string, string>(StringComparer.Ordinal));
        while (words.TryDequeue(out var word) && word != "$enddefinitions")
        {
            var body = new List<string>();
            while (words.Dequeue() is var next && next != "$end") body.Add(next);
            switch (word)
            {
                case "$timescale":
                    var joined = string.Concat(body);
                    var digits = joined.TakeWhile(char.IsAsciiDigit).Count();
                    step = double.Parse(joined[..digits], CultureInfo.InvariantCulture) * joined[digits..] switch { "s" => 1e9, "ms" => 1e6, "us" => 1e3, "ns" => 1, "ps" => 1e-3, _ => throw new FormatException(joined) };
                    break;
                case "$var":
                    Assert.Equal("1", body[1]);
                    names.Add(body[2], body[3]);
                    break;
            }
        }

        Assert.Equal("$end", words.Dequeue());
        var changes = new ValueChanges { StepNs = step };
        foreach (var name in names.Values) changes.Wires.Add(name, []);
        var now = 0L;
        foreach (var word in words.Where(word => word[0] != '$'))
        {
            if (word[0] != '#')
            {
                changes.Wires[names[word[1..]]].Add((now * step, word[0] == '1'));
                continue;
            }

            var then = long.Parse(word[1..], CultureInfo.InvariantCulture);
            Assert.True(then >= now, "time runs forwards");
            now = then;
        }

        return changes;
    }
}
