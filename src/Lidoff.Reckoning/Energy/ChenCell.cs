namespace Lidoff.Reckoning.Energy;

/// <summary>
/// The circuit of an 850 mAh lithium polymer cell by Chen and Rincon-Mora (IEEE Trans. Energy Conversion 21(2), 2006, table
/// of fitted coefficients). A cell of another size at the same rate is taken to behave alike.
/// </summary>
internal static class ChenCell
{
    /// <summary>Charge of the full cell, coulombs.</summary>
    public const double Capacity = 0.85 * 3600;

    // The fitted capacitances fall under zero at 0.5 and 1.12 %, which no cell does: below this all five stand still.
    private const double LeastCharge = 0.0125;

    // All three resistances where the curves are flat: 0.07446 + 0.04669 + 0.04984.
    private const double LumpedResistance = 0.17099;

    private const int DischargeSteps = 96;
    private const int Halvings = 40;
    private const int ChargeSteps = 32;

    /// <summary>Volts at rest; <paramref name="s"/> is the state of charge, 0 to 1.</summary>
    public static T OpenCircuit<T>(T s)
        where T : struct, IReal<T> =>
        -1.031 * T.Exp(-35 * s) + 3.685 + s * (0.2156 + s * (-0.1178 + s * 0.3201));

    public static T SeriesResistance<T>(T s)
        where T : struct, IReal<T> => Fitted<T>(s, 0.1562, 24.37, 0.07446);

    public static T FastResistance<T>(T s)
        where T : struct, IReal<T> => Fitted<T>(s, 0.3208, 29.14, 0.04669);

    public static T FastCapacitance<T>(T s)
        where T : struct, IReal<T> => Fitted<T>(s, -752.9, 13.51, 703.6);

    public static T SlowResistance<T>(T s)
        where T : struct, IReal<T> => Fitted<T>(s, 6.603, 155.2, 0.04984);

    public static T SlowCapacitance<T>(T s)
        where T : struct, IReal<T> => Fitted<T>(s, -6056, 27.12, 4475);

    /// <summary>The state of charge whose resting voltage is <paramref name="volts"/>, between empty and full.</summary>
    public static T ChargeAt<T>(T volts)
        where T : struct, IReal<T>
    {
        T low = 0, high = 1;
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) * 0.5;
            var below = OpenCircuit(middle);
            low = T.IfLess(below, volts, middle, low);
            high = T.IfLess(below, volts, high, middle);
        }

        // Halving carries no derivative; this last step does.
        var s = (low + high) * 0.5;
        var slope = 36.085 * T.Exp(-35 * s) + 0.2156 + s * (-0.2356 + s * 0.9603);
        return s + (volts - OpenCircuit(s)) / slope;
    }

    /// <summary>Seconds from full to <paramref name="cutOff"/> volts at a steady current (amperes, for this cell's size).</summary>
    public static T DischargeTime<T>(T current, T cutOff)
        where T : struct, IReal<T>
    {
        T fast = 0, slow = 0, seconds = 0, charge = 1;
        var before = OpenCircuit(charge) - current * SeriesResistance(charge);
        for (var i = 1; i <= DischargeSteps; i++)
        {
            // Steps shrink towards empty, where the curve bends; there the voltage falls below every cut-off allowed.
            var root = 1 - (double)i / DischargeSteps;
            T next = root * root;
            var middle = (charge + next) * 0.5;
            var step = (charge - next) * Capacity / current;
            T fastResistance = FastResistance(middle), slowResistance = SlowResistance(middle);
            fast = Settle(fast, current * fastResistance, step / (fastResistance * FastCapacitance(middle)));
            slow = Settle(slow, current * slowResistance, step / (slowResistance * SlowCapacitance(middle)));
            var after = OpenCircuit(next) - current * SeriesResistance(next) - fast - slow;
            var share = (before - cutOff) / T.Max(before - after, 1e-12);
            seconds += T.IfLess(cutOff, after, step, T.IfLess(cutOff, before, step * share, 0));
            before = after;
            charge = next;
        }

        return seconds;
    }

    /// <summary>Seconds of constant current up to <paramref name="limit"/> volts, then constant voltage down to the end current.</summary>
    public static T ChargeTime<T>(T current, T start, T limit, T endCurrent)
        where T : struct, IReal<T>
    {
        var end = ChargeAt(limit - endCurrent * LumpedResistance);
        var turn = T.Min(T.Max(ChargeAt(limit - current * LumpedResistance), start), end);
        var constantCurrent = T.Max(turn - start, 0) * Capacity / current;

        // dt = Q R dS / (limit - Voc). The grid is geometric in the distance to where the current would be nothing.
        var pole = end + endCurrent * LumpedResistance;
        var far = pole - turn;
        var logRatio = T.Log(far / (pole - end));
        T sum = 0;
        for (var i = 0; i <= ChargeSteps; i++)
        {
            var distance = far * T.Exp(logRatio * (-(double)i / ChargeSteps));
            double weight = i is 0 or ChargeSteps ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * distance / (limit - OpenCircuit(pole - distance));
        }

        return constantCurrent + Capacity * LumpedResistance * logRatio * sum / (3 * ChargeSteps);
    }

    // Exact for a resistor-capacitor pair whose values hold during the step, however long it is.
    private static T Settle<T>(T voltage, T settled, T stepOverTau)
        where T : struct, IReal<T> => settled + (voltage - settled) * T.Exp(-stepOverTau);

    private static T Fitted<T>(T s, double factor, double rate, double floor)
        where T : struct, IReal<T> => factor * T.Exp(-rate * T.Max(s, LeastCharge)) + floor;
}
