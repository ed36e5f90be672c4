using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Lidoff.TestSupport;

/// <summary>
/// Writes networks of a handful of nodes in the ONNX format (protocol buffers of onnx.proto3, IR version 8, operator set 13), so that tests run
/// the true runtime on something whose answer can be worked out by hand. Its two networks take bright bars for text.
/// </summary>
public sealed class TinyOnnx
{
    private const int Varint = 0, Bytes = 2;
    private readonly List<byte> graph = [];

    /// <summary>A node; attributes are whole numbers or lists of them.</summary>
    public TinyOnnx Node(string type, string[] inputs, string output, params (string Name, long[] Values, bool List)[] attributes)
    {
        var node = new List<byte>();
        foreach (var input in inputs) Text(node, 1, input);
        Text(node, 2, output);
        Text(node, 3, output);
        Text(node, 4, type);
        foreach (var (name, values, list) in attributes)
        {
            var attribute = new List<byte>();
            Text(attribute, 1, name);
            foreach (var value in values) Whole(attribute, list ? 8 : 3, value);
            Whole(attribute, 20, list ? 7 : 2);
            Field(node, 5, attribute.ToArray());
        }

        Field(graph, 1, node.ToArray());
        return this;
    }

    /// <summary>A constant of floats.</summary>
    public TinyOnnx Floats(string name, long[] dims, params float[] values)
    {
        var raw = new byte[values.Length * 4];
        for (var i = 0; i < values.Length; i++) BinaryPrimitives.WriteSingleLittleEndian(raw.AsSpan(i * 4), values[i]);
        return Tensor(name, dims, 1, raw);
    }

    /// <summary>A constant of whole numbers.</summary>
    public TinyOnnx Wholes(string name, params long[] values)
    {
        var raw = new byte[values.Length * 8];
        for (var i = 0; i < values.Length; i++) BinaryPrimitives.WriteInt64LittleEndian(raw.AsSpan(i * 8), values[i]);
        return Tensor(name, [values.Length], 7, raw);
    }

    /// <summary>The whole file; dimensions of -1 are open.</summary>
    public byte[] Model(string input, long[] inputDims, string output, long[] outputDims)
    {
        Text(graph, 2, "tiny");
        Field(graph, 11, Value(input, inputDims));
        Field(graph, 12, Value(output, outputDims));
        var (model, opset) = (new List<byte>(), new List<byte>());
        Whole(opset, 2, 13);
        Whole(model, 1, 8);
        Field(model, 7, graph.ToArray());
        Field(model, 8, opset.ToArray());
        return model.ToArray();
    }

    /// <summary>
    /// A finder that takes what is brighter than the mean by half a spread for a line of text 40 px high on its sheet, its core being what is left
    /// when 12 px are taken off above and below; text runs to the right; nothing else is ever found.
    /// </summary>
    public static byte[] Finder()
    {
        const float steep = 8;
        // Rows: core, line, cosine, sine, log height of 40 px in sixteens, dot, body, logo, cosine and sine of twice the angle.
        float[] weights = [steep, 0, 0, steep, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0];
        float[] biases = [-steep / 2, -steep / 2, 1, 0, (float)Math.Log(40 / 16.0), -8, -8, -8, 1, 0];
        return new TinyOnnx()
            .Floats("w", [10, 2, 1, 1], weights).Floats("b", [10], biases)
            .Node("Neg", ["picture"], "negative")
            .Node("MaxPool", ["negative"], "eroded", ("kernel_shape", [25, 1], true), ("pads", [12, 0, 12, 0], true))
            .Node("Neg", ["eroded"], "inner")
            .Node("Concat", ["inner", "picture"], "two", ("axis", [1], false))
            .Node("AveragePool", ["two"], "cells", ("kernel_shape", [4, 4], true), ("strides", [4, 4], true))
            .Node("Conv", ["cells", "w", "b"], "maps", ("kernel_shape", [1, 1], true))
            .Model("picture", [1, 1, -1, -1], "maps", [1, 10, -1, -1]);
    }

    /// <summary>A reader that takes each step's mean brightness for the class of the nearest level; class 0 is the blank, others are never chosen.</summary>
    /// <param name="classes">Classes in all.</param>
    /// <param name="levels">Level of a class, in spreads from the mean.</param>
    public static byte[] Reader(int classes, IReadOnlyDictionary<int, float> levels)
    {
        const float steep = 30;
        var (weights, biases) = (new float[classes], new float[classes]);
        Array.Fill(biases, -1000);
        // The nearest level has the largest 2 l b - l².
        foreach (var (at, level) in levels) (weights[at], biases[at]) = (2 * steep * level, -steep * level * level);
        return new TinyOnnx()
            .Floats("w", [classes, 1, 1, 1], weights).Floats("b", [classes], biases).Wholes("axis", 2)
            .Node("AveragePool", ["lines"], "steps", ("kernel_shape", [48, 4], true), ("strides", [48, 4], true))
            .Node("Conv", ["steps", "w", "b"], "flat", ("kernel_shape", [1, 1], true))
            .Node("Squeeze", ["flat", "axis"], "rows")
            .Node("Transpose", ["rows"], "scores", ("perm", [0, 2, 1], true))
            .Model("lines", [-1, 1, 48, -1], "scores", [-1, -1, classes]);
    }

    /// <summary>Writes a network and a card that fits it into a folder.</summary>
    public static void Write(string folder, string name, byte[] network, string alphabet = "")
    {
        Directory.CreateDirectory(folder);
        File.WriteAllBytes(Path.Combine(folder, name + ".onnx"), network);
        var hash = Convert.ToHexStringLower(SHA256.HashData(network));
        File.WriteAllText(Path.Combine(folder, name + ".json"), $$"""{"name":"tiny {{name}}","version":"1","sha256":"{{hash}}"{{(alphabet.Length > 0 ? $",\"alphabet\":\"{alphabet}\"" : "")}},"temperature":1.0,"seed":1}""");
    }

    private TinyOnnx Tensor(string name, long[] dims, int type, byte[] raw)
    {
        var tensor = new List<byte>();
        foreach (var dim in dims) Whole(tensor, 1, dim);
        Whole(tensor, 2, type);
        Text(tensor, 8, name);
        Field(tensor, 9, raw);
        Field(graph, 5, tensor.ToArray());
        return this;
    }

    private static byte[] Value(string name, long[] dims)
    {
        List<byte> value = [], type = [], tensor = [], shape = [];
        for (var i = 0; i < dims.Length; i++)
        {
            var dim = new List<byte>();
            if (dims[i] < 0) Text(dim, 2, $"d{i}");
            else Whole(dim, 1, dims[i]);
            Field(shape, 1, dim.ToArray());
        }

        Whole(tensor, 1, 1);
        Field(tensor, 2, shape.ToArray());
        Field(type, 1, tensor.ToArray());
        Text(value, 1, name);
        Field(value, 2, type.ToArray());
        return value.ToArray();
    }

    private static void Text(List<byte> to, int field, string text) => Field(to, field, Encoding.UTF8.GetBytes(text));

    private static void Field(List<byte> to, int field, byte[] bytes)
    {
        Number(to, (ulong)((field << 3) | Bytes));
        Number(to, (ulong)bytes.Length);
        to.AddRange(bytes);
    }

    private static void Whole(List<byte> to, int field, long value)
    {
        Number(to, (ulong)((field << 3) | Varint));
        Number(to, (ulong)value);
    }

    private static void Number(List<byte> to, ulong value)
    {
        for (; value >= 0x80; value >>= 7) to.Add((byte)(value | 0x80));
        to.Add((byte)value);
    }
}
