using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Telling.Drawing.Diagrams;

/// <summary>
/// Boxes in columns from left to right along their lines, lines at right angles in the gutters between the columns; a line that
/// passes a column gets a place of its own in it, so that it crosses no box. Boxes that nothing joins stand in rows under all others.
/// Deterministic: the same boxes and lines in any order give the same places. Made for some dozens of boxes.
/// </summary>
/// <remarks>
/// A drawing that would be wider than a bench's card gets its words broken over more lines, boxes first, then labels, as far as words
/// can be broken without cutting one; what is still wider stays so.
/// </remarks>
public sealed class LayeredLayout
{
    /// <summary>Size of the words in boxes.</summary>
    public const double WordSize = 14;

    /// <summary>Size of the words on lines.</summary>
    public const double LabelSize = 11;

    /// <summary>Widest words of a box.</summary>
    public const double WidestWords = 200;

    /// <summary>Widest drawing that is not narrowed: at a card of 960 px, which a window of 1440 px has, its labels are 9.7 px high.</summary>
    public const double Wanted = 1090;

    /// <summary>Most lines of one text in a box of the usual width, its name aside.</summary>
    public const int MostLines = 3;

    /// <summary>Widest words on a line.</summary>
    public const double WidestLabel = 110;

    private const double Line = 18;
    private const double Padding = 8;
    private const double Gap = 18;
    private const double PortGap = 18;
    private const double WidePortGap = 30;
    private const double PassHeight = 6;
    private const double TrackGap = 8;
    private const double Margin = 8;
    private const int Sweeps = 6;

    // From wide to narrow: where words in boxes break, and whether those on lines do.
    private static readonly (double Words, bool Labels)[] Breaks = [(WidestWords, false), (WidestWords, true), (160, true), (130, true), (110, true), (95, true), (80, true)];

    private readonly List<Cell> cells = [];
    private readonly List<Wire> wires = [];
    private readonly List<Cell> alone;

    private LayeredLayout(IReadOnlyList<DiagramBox> boxes, IReadOnlyList<DiagramLink> links, (double Words, bool Labels) breaks)
    {
        var ordered = boxes.DistinctBy(box => box.Name, StringComparer.Ordinal).OrderBy(box => box.Name, NaturalOrder.Instance).ThenBy(box => box.Name, StringComparer.Ordinal).ToList();
        var kept = links.Where(link => link.From != link.To && ordered.Any(box => box.Name == link.From) && ordered.Any(box => box.Name == link.To)).Distinct()
            .OrderBy(link => link.From, NaturalOrder.Instance).ThenBy(link => link.To, NaturalOrder.Instance).ThenBy(link => link.Label, StringComparer.Ordinal).ThenBy(link => link.Style, StringComparer.Ordinal).ThenBy(link => link.Arrow).ToList();
        var rank = Ranks([.. ordered.Select(box => box.Name)], kept);
        var byName = ordered.OrderBy(box => rank[box.Name]).Select(box => new Cell(box, WordsOf(box, breaks.Words))).ToDictionary(cell => cell.Box!.Name, StringComparer.Ordinal);
        var joined = kept.SelectMany(link => new[] { link.From, link.To }).ToHashSet(StringComparer.Ordinal);
        alone = [.. ordered.Where(box => !joined.Contains(box.Name)).Select(box => byName[box.Name])];
        cells.AddRange(byName.Values.Except(alone));
        foreach (var link in kept)
        {
            var reversed = rank[link.From] > rank[link.To];
            wires.Add(new(link, LabelOf(link.Label, breaks.Labels), reversed, [byName[reversed ? link.To : link.From], byName[reversed ? link.From : link.To]]));
        }
    }

    /// <summary>Places boxes and lines. Lines from a box to itself or to no box are left out.</summary>
    public static PlacedDiagram Place(IReadOnlyList<DiagramBox> boxes, IReadOnlyList<DiagramLink> links)
    {
        Guard.NotNull(boxes);
        Guard.NotNull(links);
        PlacedDiagram? narrowest = null;
        foreach (var breaks in Breaks)
        {
            var layout = new LayeredLayout(boxes, links, breaks);
            layout.Columns();
            layout.Order();
            var placed = layout.Coordinates();
            if (narrowest is null || placed.Width < narrowest.Width) narrowest = placed;
            if (narrowest.Width <= Wanted) break;
        }

        return narrowest!;
    }

    /// <summary>A place for each name so that most links run forwards; of a circle the first name in order goes first.</summary>
    private static Dictionary<string, int> Ranks(List<string> names, List<DiagramLink> links)
    {
        var rank = new Dictionary<string, int>(StringComparer.Ordinal);
        var left = names.ToList();
        while (left.Count > 0)
        {
            var next = left.FirstOrDefault(name => links.All(link => link.To != name || rank.ContainsKey(link.From))) ?? left[0];
            rank[next] = rank.Count;
            left.Remove(next);
        }

        return rank;
    }

    /// <summary>Each box as far right as its longest way from the left; wires that pass columns get a cell in each.</summary>
    private void Columns()
    {
        // Cells stand in the order of their ranks and wires run along it, so one pass settles all.
        foreach (var cell in cells)
        {
            foreach (var wire in wires.Where(wire => wire.Way[0] == cell)) wire.Way[^1].Column = Math.Max(wire.Way[^1].Column, cell.Column + 1);
        }

        // What nothing leads to stands just before what it leads to: its lines pass no columns for nothing.
        foreach (var cell in cells.Where(cell => wires.TrueForAll(wire => wire.Way[^1] != cell))) cell.Column = wires.Where(wire => wire.Way[0] == cell).Min(wire => wire.Way[^1].Column) - 1;

        foreach (var wire in wires)
        {
            var (from, to) = (wire.Way[0], wire.Way[^1]);
            var passes = Enumerable.Range(from.Column + 1, to.Column - from.Column - 1).Select(column => new Cell(null, []) { Column = column }).ToList();
            wire.Way = [from, .. passes, to];
            cells.AddRange(passes);
        }
    }

    /// <summary>Cells of each column by the middle of their neighbours, to and fro, so that fewer lines cross.</summary>
    private void Order()
    {
        var columns = cells.GroupBy(cell => cell.Column).OrderBy(group => group.Key).Select(group => group.ToList()).ToList();
        foreach (var column in columns) Number(column);
        for (var sweep = 0; sweep < Sweeps; sweep++)
        {
            var forwards = sweep % 2 == 0;
            foreach (var column in forwards ? columns.AsEnumerable() : columns.AsEnumerable().Reverse())
            {
                var wish = column.ToDictionary(cell => cell, cell => Middle(cell, forwards));
                column.Sort((a, b) => wish[a] != wish[b] ? wish[a].CompareTo(wish[b]) : a.Place.CompareTo(b.Place));
                Number(column);
            }
        }

        cells.Sort((a, b) => a.Column != b.Column ? a.Column.CompareTo(b.Column) : a.Place.CompareTo(b.Place));
    }

    private double Middle(Cell cell, bool left)
    {
        var (sum, count) = (0.0, 0);
        foreach (var way in wires.Select(wire => wire.Way))
        {
            var at = Array.IndexOf(way, cell);
            var other = at < 0 ? -1 : left ? at - 1 : at + 1;
            if (at < 0 || other < 0 || other >= way.Length) continue;
            sum += way[other].Place;
            count++;
        }

        return count == 0 ? cell.Place : sum / count;
    }

    private static void Number(List<Cell> column)
    {
        for (var i = 0; i < column.Count; i++) column[i].Place = i;
    }

    private PlacedDiagram Coordinates()
    {
        var hops = wires.SelectMany(wire => wire.Way.Zip(wire.Way.Skip(1), (from, to) => new Hop(wire, from, to))).ToList();
        Ports(hops);
        var x = Margin;
        double bottom = 0;
        foreach (var column in cells.GroupBy(cell => cell.Column))
        {
            var width = column.Max(cell => cell.Width);
            var y = Margin;
            foreach (var cell in column)
            {
                (cell.X, cell.Y) = (x, y);
                y += cell.Height + Gap;
            }

            bottom = Math.Max(bottom, y - Gap);
            var leaving = hops.Where(hop => hop.From.Column == column.Key).ToList();
            x += width + Gutter(leaving, x + width);
        }

        bottom = Rows(bottom > 0 ? bottom + Gap : Margin);
        var placed = cells.Where(cell => cell.Box is not null).Concat(alone).Select(cell => new PlacedBox(cell.Box!, cell.Lines, cell.X, cell.Y, cell.Width, cell.Height)).ToList();
        var right = placed.Count == 0 ? Margin : placed.Max(box => box.X + box.Width);
        var lines = wires.Select(wire => new PlacedLink(wire.Link, wire.Label, Corners(hops.Where(hop => hop.Wire == wire).ToList()), wire.Reversed));
        return new([.. placed], [.. lines], right + Margin, Math.Max(bottom, Margin) + Margin);
    }

    /// <summary>Boxes that nothing joins, in rows from <paramref name="y"/> on; the lowest place that any box then reaches.</summary>
    private double Rows(double y)
    {
        if (alone.Count == 0) return y - Gap;
        var step = alone.Max(cell => cell.Width) + Gap;
        foreach (var row in alone.Chunk(Math.Max(1, (int)((Wanted - (2 * Margin) + Gap) / step))))
        {
            for (var i = 0; i < row.Length; i++) (row[i].X, row[i].Y) = (Margin + (i * step), y);
            y += row.Max(cell => cell.Height) + Gap;
        }

        return y - Gap;
    }

    /// <summary>Where lines leave and enter: those of one label together, in the order of where they lead, far enough apart for their words.</summary>
    private static void Ports(List<Hop> hops)
    {
        foreach (var leaving in hops.GroupBy(hop => hop.From))
        {
            var groups = leaving.GroupBy(hop => hop.Trunk).OrderBy(group => group.Average(hop => hop.To.Place)).ThenBy(group => group.Key, StringComparer.Ordinal).ToList();
            leaving.Key.Out = groups.Count;
            leaving.Key.PortGap = groups.Exists(group => group.First().Wire.Label.Count > 1) ? WidePortGap : PortGap;
            for (var i = 0; i < groups.Count; i++)
            {
                foreach (var hop in groups[i]) hop.OutPort = i;
            }
        }

        foreach (var entering in hops.GroupBy(hop => hop.To))
        {
            var ordered = entering.OrderBy(hop => hop.From.Place).ThenBy(hop => hop.OutPort).ToList();
            entering.Key.In = ordered.Count;
            for (var i = 0; i < ordered.Count; i++) ordered[i].InPort = i;
        }
    }

    /// <summary>Gives each trunk its track behind the widest label and says how wide the gutter is.</summary>
    private static double Gutter(List<Hop> leaving, double start)
    {
        var label = leaving.Where(hop => hop.From.Box is not null).Select(hop => hop.Wire.Label.Max(words => WordsWidth.Of(words, LabelSize))).DefaultIfEmpty(0).Max();
        var tracks = leaving.GroupBy(hop => (hop.From, hop.Trunk)).OrderBy(group => group.Key.From.Place).ThenBy(group => group.First().OutPort).ToList();
        for (var i = 0; i < tracks.Count; i++)
        {
            foreach (var hop in tracks[i]) hop.Track = start + label + (TrackGap * (i + 1));
        }

        return label + (TrackGap * (tracks.Count + 2));
    }

    private static ValueList<(double X, double Y)> Corners(List<Hop> hops)
    {
        var corners = new List<(double X, double Y)>();
        foreach (var hop in hops)
        {
            var (y1, y2) = (hop.From.PortY(hop.OutPort, hop.From.Out), hop.To.PortY(hop.InPort, hop.To.In));
            corners.AddRange([(hop.From.X + (hop.From.Box is null ? 0 : hop.From.Width), y1), (hop.Track, y1), (hop.Track, y2), (hop.To.X, y2)]);
        }

        return [.. corners];
    }

    // The words on a line as they are drawn: above it, or where they are broken, half of them below it.
    private static ValueList<string> LabelOf(string label, bool broken)
    {
        var parts = Enumerable.Range(0, label.Length).Where(i => broken && label[i] == ' ').Select(i => (string[])[label[..i], label[(i + 1)..]])
            .OrderBy(each => each.Max(words => WordsWidth.Of(words, LabelSize))).FirstOrDefault() ?? [label];
        return [.. parts.Select(words => WordsWidth.Cut(words, LabelSize, WidestLabel))];
    }

    // The words of a box as they are drawn; what is broken earlier gets more lines. A part's number is broken nowhere: half of it names another part.
    private static ValueList<string> WordsOf(DiagramBox box, double most) =>
        [.. box.Words.SelectMany((words, i) => WordsWidth.Lines(words, WordSize, Math.Min(WidestWords, Math.Max(most, words.Split(' ').Max(word => WordsWidth.Of(word, WordSize)))), i == 0 ? 1 : (int)Math.Ceiling(MostLines * WidestWords / most)))];

    /// <summary>Baseline of a box's line of words, from its top.</summary>
    internal static double Baseline(int line) => Padding + (Line * line) + WordSize;

    /// <summary>Words stand so far from the box's side.</summary>
    internal static double Inset => Padding;

    private sealed class Cell(DiagramBox? box, ValueList<string> lines)
    {
        public DiagramBox? Box => box;

        public ValueList<string> Lines => lines;

        public double PortGap { get; set; } = LayeredLayout.PortGap;

        public int Column { get; set; }

        public int Place { get; set; }

        public int Out { get; set; }

        public int In { get; set; }

        public double X { get; set; }

        public double Y { get; set; }

        public double Width => box is null ? 0 : lines.Select((words, i) => WordsWidth.Of(words, WordSize, bold: i == 0)).DefaultIfEmpty(0).Max() + (2 * Padding);

        public double Height => box is null ? PassHeight : Math.Max((2 * Padding) + (Line * Math.Max(1, lines.Count)), Math.Max(PortGap * (Out + 1), LayeredLayout.PortGap * (In + 1)));

        public double PortY(int port, int ports) => box is null ? Y + (PassHeight / 2) : Y + (Height * (port + 1) / (ports + 1));
    }

    private sealed class Wire(DiagramLink link, ValueList<string> label, bool reversed, Cell[] way)
    {
        public DiagramLink Link => link;

        public ValueList<string> Label => label;

        public bool Reversed => reversed;

        public Cell[] Way { get; set; } = way;
    }

    private sealed class Hop(Wire wire, Cell from, Cell to)
    {
        public Wire Wire => wire;

        public Cell From => from;

        public Cell To => to;

        /// <summary>Lines under one label leave a box as one; a line that only passes is its own.</summary>
        public string Trunk => wire.Link.Style + "\n" + wire.Link.Label;

        public int OutPort { get; set; }

        public int InPort { get; set; }

        public double Track { get; set; }
    }
}
