using System.Globalization;
using System.Text;

namespace Lidoff.Demo;

/// <summary>
/// The recorder of the sensor bus: a value change dump (IEEE 1364, clause 18) of two lines that carry I2C at 100 kHz. The clock is
/// asked for its seven time registers each second, the accelerometer for its identity and its axes; one address stays silent.
/// </summary>
internal static class DemoBus
{
    public const string Name = "brindle-bus.vcd";

    /// <summary>Addresses that answer.</summary>
    public const int Clock = 0x52, Accelerometer = 0x53;

    /// <summary>An address nobody answers at.</summary>
    public const int Silent = 0x1e;

    // 100 kHz, the Standard-mode of UM10204: a quarter of a period in nanoseconds.
    private const long QuarterNs = 2_500;

    /// <summary>The file's text.</summary>
    public static string Text()
    {
        var wire = new Wire();
        for (var second = 0; second < 3; second++)
        {
            wire.At(second * 1_000_000_000L + 1_000_000);
            wire.Write(Clock, true, 0x00);
            wire.Read(Clock, [(byte)(0x30 + second), 0x14, 0x09, 0x01, 0x02, 0x03, 0x26]);
            if (second == 0)
            {
                wire.Write(Silent, false);
                wire.Write(Accelerometer, true, 0x00);
                wire.Read(Accelerometer, [0xE5]);
            }

            wire.Write(Accelerometer, true, 0x32);
            wire.Read(Accelerometer, [(byte)(2 + second), 0x00, 0xFE, 0xFF, 0xFA, 0x00]);
        }

        return wire.Text();
    }

    /// <summary>Both lines, high at rest.</summary>
    private sealed class Wire
    {
        private readonly StringBuilder body = new(
            "$comment Invented: recorded by Lidoff's own recorder for the invented device Brindle; no real product. $end\n$timescale 1 ns $end\n$scope module bus $end\n"
            + "$var wire 1 ! SCL $end\n$var wire 1 \" SDA $end\n$upscope $end\n$enddefinitions $end\n#0\n$dumpvars\n1!\n1\"\n$end\n");

        private long now;
        private bool scl = true;
        private bool sda = true;

        public void At(long time) => now = Math.Max(now, time);

        public void Write(int address, bool answers, params ReadOnlySpan<byte> bytes)
        {
            Start();
            Byte((byte)(address << 1), answers);
            foreach (var value in bytes) Byte(value, true);
            Stop();
        }

        public void Read(int address, ReadOnlySpan<byte> bytes)
        {
            Start();
            Byte((byte)((address << 1) | 1), true);
            // The reader answers every byte but the last.
            for (var i = 0; i < bytes.Length; i++) Byte(bytes[i], i + 1 < bytes.Length);
            Stop();
        }

        public string Text() => body.ToString();

        // Standard-mode wants 4.0 µs from the start to the clock's fall, and as much before the stop: two quarters.
        private void Start()
        {
            Set(true, true);
            Set(true, false);
            Set(true, false);
            Set(false, false);
        }

        private void Byte(byte value, bool answered)
        {
            for (var bit = 7; bit >= 0; bit--) Bit(((value >> bit) & 1) != 0);
            Bit(!answered);
        }

        private void Bit(bool high)
        {
            Set(false, high);
            Set(true, high);
            Set(true, high);
            Set(false, high);
        }

        private void Stop()
        {
            Set(false, false);
            Set(true, false);
            Set(true, false);
            Set(true, true);
            now += 20 * QuarterNs;
        }

        private void Set(bool clock, bool data)
        {
            now += QuarterNs;
            if (clock == scl && data == sda) return;
            body.Append(CultureInfo.InvariantCulture, $"#{now}\n");
            if (clock != scl) body.Append(clock ? "1!\n" : "0!\n");
            if (data != sda) body.Append(data ? "1\"\n" : "0\"\n");
            (scl, sda) = (clock, data);
        }
    }
}
