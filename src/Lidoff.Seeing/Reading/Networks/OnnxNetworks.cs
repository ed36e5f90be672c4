using System.Reflection;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Lattices;
using Microsoft.ML.OnnxRuntime;

namespace Lidoff.Seeing.Reading.Networks;

/// <summary>
/// The networks of a folder under ONNX Runtime. Runtime and files are asked for when a mark is first read and never before; where
/// they are missing or altered, reading is off with one sentence each and everything else goes on. One thread, so that what comes out does
/// not depend on how many cores the bench has.
/// </summary>
public sealed class OnnxNetworks : IReadingNetworks, IDisposable
{
    // Strips of one width go through together; more at once only costs memory.
    private const int Together = 16;

    private readonly Lazy<Loaded> loaded;

    /// <summary>Networks of a folder: <c>finder.onnx</c>, <c>bodies.onnx</c>, <c>reader.onnx</c>, and a card beside each.</summary>
    public OnnxNetworks(string folder)
    {
        Guard.NotNull(folder);
        loaded = new(() => Load(folder));
    }

    /// <summary>The folder of the networks that come with the program.</summary>
    public static string FolderOf(string programFolder) => Path.Combine(programFolder, "models");

    /// <inheritdoc/>
    public IReadOnlyList<Fault> Troubles => loaded.Value.Faults;

    /// <inheritdoc/>
    public IReadOnlyList<string> Hashes => [Ready.FinderCard.Sha256, Ready.BodiesCard.Sha256, Ready.ReaderCard.Sha256];

    /// <inheritdoc/>
    public double LineTemperature => Ready.ReaderCard.LineTemperature;

    /// <inheritdoc/>
    public string Settings
    {
        get
        {
            var runtime = typeof(InferenceSession).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "";
            return $"{Ready.FinderCard.Name} {Ready.FinderCard.Version}, {Ready.BodiesCard.Name} {Ready.BodiesCard.Version}, {Ready.ReaderCard.Name} {Ready.ReaderCard.Version}, onnxruntime {runtime}, one thread";
        }
    }

    private Networks Ready => loaded.Value.Networks ?? throw new InvalidOperationException("asked for networks that are not there: " + Troubles[0].Say);

    /// <inheritdoc/>
    public FinderMaps Find(FinderSheet sheet) => Maps(Ready.Finder, Guard.NotNull(sheet));

    /// <inheritdoc/>
    public FinderMaps Bodies(FinderSheet sheet) => Maps(Ready.Bodies, Guard.NotNull(sheet));

    private static FinderMaps Maps(InferenceSession network, FinderSheet sheet)
    {
        var maps = Run(network, "picture", sheet.Pixels, [1, 1, sheet.Height, sheet.Width], "maps");
        return new(maps, sheet.Width / FinderMaps.Cell, sheet.Height / FinderMaps.Cell, Up(sheet.ValidWidth), Up(sheet.ValidHeight));
    }

    /// <inheritdoc/>
    public IReadOnlyList<CtcLattice> Score(IReadOnlyList<LineStrip> strips)
    {
        var lattices = new CtcLattice[Guard.NotNull(strips).Count];
        foreach (var group in Enumerable.Range(0, strips.Count).GroupBy(i => strips[i].Width).OrderBy(group => group.Key))
        {
            foreach (var chunk in group.Chunk(Together))
            {
                var pixels = new float[chunk.Length * LineStrip.Rows * group.Key];
                for (var k = 0; k < chunk.Length; k++) strips[chunk[k]].Pixels.CopyTo(pixels, k * LineStrip.Rows * group.Key);
                var scores = Run(Ready.Reader, "lines", pixels, [chunk.Length, 1, LineStrip.Rows, group.Key], "scores");
                var each = scores.Length / chunk.Length;
                for (var k = 0; k < chunk.Length; k++)
                {
                    // As in training: steps that lie wholly behind the line say nothing.
                    var (valid, every) = (strips[chunk[k]].ValidWidth, each / Ready.Alphabet.Classes);
                    var steps = Math.Clamp(((valid * every) + group.Key - 1) / group.Key, 1, every);
                    lattices[chunk[k]] = CtcLattice.OfScores(scores.AsSpan(k * each, steps * Ready.Alphabet.Classes), Ready.Alphabet, Ready.ReaderCard.Temperature, Math.Min(1, (double)valid * every / (group.Key * steps)));
                }
            }
        }

        return lattices;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (loaded.IsValueCreated) loaded.Value.Networks?.Dispose();
    }

    private static int Up(int px) => (px + FinderMaps.Cell - 1) / FinderMaps.Cell;

    private static float[] Run(InferenceSession session, string input, float[] values, long[] shape, string output)
    {
        using var options = new RunOptions();
        using var tensor = OrtValue.CreateTensorValueFromMemory(values, shape);
        using var results = session.Run(options, [input], [tensor], [output]);
        return results[0].GetTensorDataAsSpan<float>().ToArray();
    }

    private static Loaded Load(string folder)
    {
        var (finder, bodies, reader) = (ModelFile.Read(folder, "finder"), ModelFile.Read(folder, "bodies"), ModelFile.Read(folder, "reader"));
        List<Fault> faults = [.. finder.Faults, .. bodies.Faults, .. reader.Faults];
        if (faults.Count > 0) return new(null, faults);
        if (reader.Value.Card.Alphabet.Length == 0) return new(null, [ReadingSentences.CardUnread("reader.json", ReadingSentences.NoAlphabet)]);
        string[] files = ["finder.onnx", "bodies.onnx", "reader.onnx"];
        var sessions = new List<InferenceSession>();
        try
        {
            sessions.Add(Session(finder.Value, "picture", "maps"));
            sessions.Add(Session(bodies.Value, "picture", "maps"));
            sessions.Add(Session(reader.Value, "lines", "scores"));
            return new(new(sessions[0], sessions[1], sessions[2], finder.Value.Card, bodies.Value.Card, reader.Value.Card, new(reader.Value.Card.Alphabet)), []);
        }
        catch (Exception failure) when (failure is OnnxRuntimeException or InvalidDataException)
        {
            foreach (var session in sessions) session.Dispose();
            return new(null, [ReadingSentences.NetworkUnread(files[sessions.Count], failure.Message)]);
        }
        catch (Exception failure) when (failure is DllNotFoundException or TypeInitializationException or BadImageFormatException or EntryPointNotFoundException)
        {
            return new(null, [ReadingSentences.NoRuntime(failure.InnerException?.Message ?? failure.Message)]);
        }
    }

    private static InferenceSession Session(ModelFile file, string input, string output)
    {
        using var options = new SessionOptions
        {
            IntraOpNumThreads = 1,
            InterOpNumThreads = 1,
            ExecutionMode = ExecutionMode.ORT_SEQUENTIAL,
            LogSeverityLevel = OrtLoggingLevel.ORT_LOGGING_LEVEL_ERROR,
        };
        var session = new InferenceSession(file.Bytes, options);
        if (session.InputMetadata.ContainsKey(input) && session.OutputMetadata.ContainsKey(output)) return session;
        session.Dispose();
        throw new InvalidDataException($"it has no input “{input}” or no output “{output}”");
    }

    private sealed record Loaded(Networks? Networks, IReadOnlyList<Fault> Faults);

    private sealed record Networks(InferenceSession Finder, InferenceSession Bodies, InferenceSession Reader, ModelCard FinderCard, ModelCard BodiesCard, ModelCard ReaderCard, ReadingAlphabet Alphabet) : IDisposable
    {
        public void Dispose()
        {
            Finder.Dispose();
            Bodies.Dispose();
            Reader.Dispose();
        }
    }
}
