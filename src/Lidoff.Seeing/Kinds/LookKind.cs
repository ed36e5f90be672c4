using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Cameras;

namespace Lidoff.Seeing.Kinds;

/// <summary>What a picture's own edges and words said when a machine looked at it. Stored once and never looked at again in silence.</summary>
public sealed class LookKind : EvidenceKind<LookSighting>
{
    private const int LongestName = 255;
    private const int EdgeNumbers = PictureSlant.Count + 1;
    private const int CovarianceNumbers = PictureSlant.Count * (PictureSlant.Count + 1) / 2;

    /// <summary>The kind's name.</summary>
    public const string Word = "look";

    /// <inheritdoc/>
    public override string Name => Word;

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.MachineSighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "A machine looked at a picture: what its straight edges say of the camera, and whether its words read mirrored.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("picture", "text", true, "content hash of the picture"),
        new("edges", "numbers", false, "direction of the board's lines (rad), convergence along x and y per half long side, excess over a right angle (rad), bend of the lens at half a long side; missing where the edges tell nothing"),
        new("edges_covariance", "numbers", false, "lower triangle of the covariance of the last four, row by row; with edges"),
        new("words_mirrored", "flag", true, "true where the words in it read mirrored"),
        new("program", "text", true, "version of the program that looked"),
    ];

    /// <summary>Hash of the picture that a stored look is about; empty where the payload has none.</summary>
    public static string PictureOf(ReadOnlyMemory<byte> payload)
    {
        using var json = JsonDocument.Parse(payload);
        return json.RootElement.TryGetProperty("picture", out var picture) && picture.ValueKind == JsonValueKind.String ? picture.GetString()! : "";
    }

    /// <summary>Writes the keys of one look.</summary>
    public static void WriteKeys(Utf8JsonWriter json, LookSighting look)
    {
        Guard.NotNull(json);
        Guard.NotNull(look);
        json.WriteString("picture", look.Picture);
        if (look.Edges.Count > 0)
        {
            Write(json, "edges", look.Edges);
            Write(json, "edges_covariance", look.Covariance);
        }

        json.WriteBoolean("words_mirrored", look.WordsMirrored);
        json.WriteString("program", look.Program);
    }

    /// <inheritdoc/>
    public override Outcome<LookSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var picture = reader.Text("picture", LongestName);
        var edges = reader.Numbers("edges", 0, EdgeNumbers);
        var covariance = reader.Numbers("edges_covariance", 0, CovarianceNumbers);
        if (edges.Count is not (0 or EdgeNumbers)) reader.Fail("edges", SeeingSentences.LookEdges(EdgeNumbers));
        else if (covariance.Count != (edges.Count == 0 ? 0 : CovarianceNumbers)) reader.Fail("edges_covariance", SeeingSentences.LookCovariance(CovarianceNumbers));
        else if (edges.Count > 0 && PictureSlant.Of(edges[0], [.. edges.Skip(1)], covariance) is null) reader.Fail("edges_covariance", SeeingSentences.LookNoCovariance);
        var mirrored = reader.Flag("words_mirrored");
        var program = reader.Text("program", LongestName);
        return reader.Done(() => new LookSighting(picture, edges, covariance, mirrored, program));
    }

    private static void Write(Utf8JsonWriter json, string key, IReadOnlyList<double> values)
    {
        json.WriteStartArray(key);
        foreach (var value in values) json.WriteNumberValue(value);
        json.WriteEndArray();
    }
}
