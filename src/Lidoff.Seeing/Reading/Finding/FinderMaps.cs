using Lidoff.Numbers;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Seeing.Reading.Finding;

/// <summary>
/// What the finder says of each cell of 4 × 4 px of its sheet: is it the core of a text line (the middle two fifths of its height, a tenth of it
/// short of either end), is it in a line (a pixel larger all round), which way the text runs, how high its capitals are; is it a pin-1 dot, a
/// body's top, a logo; along which axis the text lies, whichever way it runs. Places are in px of the sheet.
/// </summary>
public sealed class FinderMaps
{
    /// <summary>Maps of the network.</summary>
    public const int Count = 10;

    /// <summary>Side of a cell, px of the sheet.</summary>
    public const int Cell = 4;

    // The network gives the natural log of the height in sixteen px.
    private const double HeightUnit = 16;

    private readonly float[] maps;
    private readonly double[] core, line, dot, body, logo;

    /// <summary>Takes over the network's answer.</summary>
    /// <param name="maps">Ten maps, each row after row.</param>
    /// <param name="columns">Cells across.</param>
    /// <param name="rows">Cells down.</param>
    /// <param name="validColumns">Cells that hold picture, across.</param>
    /// <param name="validRows">Cells that hold picture, down.</param>
    public FinderMaps(float[] maps, int columns, int rows, int validColumns, int validRows)
    {
        Guard.That(Guard.NotNull(maps).Length == Count * columns * rows, "ten maps as large as they say");
        Guard.That(validColumns > 0 && validColumns <= columns && validRows > 0 && validRows <= rows, "a valid part within the maps");
        this.maps = maps;
        (Columns, Rows, ValidColumns, ValidRows) = (columns, rows, validColumns, validRows);
        (core, line, dot, body, logo) = (Shares(0), Shares(1), Shares(5), Shares(6), Shares(7));
    }

    /// <summary>Cells across.</summary>
    public int Columns { get; }

    /// <summary>Cells down.</summary>
    public int Rows { get; }

    /// <summary>Cells across that hold picture.</summary>
    public int ValidColumns { get; }

    /// <summary>Cells down that hold picture.</summary>
    public int ValidRows { get; }

    /// <summary>Probability of a line's core, by cell.</summary>
    internal double[] Core => core;

    /// <summary>Probability of a pin-1 dot, by cell.</summary>
    internal double[] Dot => dot;

    /// <summary>Probability of a body's top, by cell.</summary>
    internal double[] Body => body;

    /// <summary>Probability of a logo, by cell.</summary>
    internal double[] Logo => logo;

    /// <summary>Which way the text runs in a cell: cosine and sine, not always of unit length.</summary>
    internal (double Cos, double Sin) Direction(int cell) => (maps[(2 * Columns * Rows) + cell], maps[(3 * Columns * Rows) + cell]);

    /// <summary>Cosine and sine of twice the text's angle in a cell.</summary>
    internal (double Cos, double Sin) Axis(int cell) => (maps[(8 * Columns * Rows) + cell], maps[(9 * Columns * Rows) + cell]);

    /// <summary>Cells of a map from a threshold on that hang together.</summary>
    internal List<List<int>> Patches(double[] map, double threshold) => ConnectedPatches.Of(Array.ConvertAll(map, share => share >= threshold), Columns);

    /// <summary>Height of the characters at a cell, px of the sheet.</summary>
    internal double Height(int cell) => HeightUnit * Elementary.Exp(Math.Clamp(maps[(4 * Columns * Rows) + cell], -4, 4));

    /// <summary>Middle of a cell, px of the sheet.</summary>
    internal (double X, double Y) Middle(int cell) => ((cell % Columns * Cell) + (Cell / 2.0), (cell / Columns * Cell) + (Cell / 2.0));

    /// <summary>Probability of a line's core at any place, between cells by their neighbours.</summary>
    internal double CoreAt(double x, double y) => At(core, x, y);

    /// <summary>Probability of being in a line at any place.</summary>
    internal double LineAt(double x, double y) => At(line, x, y);

    private double At(double[] map, double x, double y)
    {
        var (fx, fy) = ((x / Cell) - 0.5, (y / Cell) - 0.5);
        var (x0, y0) = ((int)Math.Floor(fx), (int)Math.Floor(fy));
        var (dx, dy) = (fx - x0, fy - y0);
        // Beyond the picture there is nothing.
        double Of(int column, int row) => column < 0 || row < 0 || column >= ValidColumns || row >= ValidRows ? 0 : map[(row * Columns) + column];
        return (((Of(x0, y0) * (1 - dx)) + (Of(x0 + 1, y0) * dx)) * (1 - dy)) + (((Of(x0, y0 + 1) * (1 - dx)) + (Of(x0 + 1, y0 + 1) * dx)) * dy);
    }

    private double[] Shares(int map)
    {
        var shares = new double[Columns * Rows];
        for (var cell = 0; cell < shares.Length; cell++)
        {
            if (cell % Columns >= ValidColumns || cell / Columns >= ValidRows) continue;
            shares[cell] = 1 / (1 + Elementary.Exp(-Math.Clamp(maps[(map * shares.Length) + cell], -40, 40)));
        }

        return shares;
    }
}
