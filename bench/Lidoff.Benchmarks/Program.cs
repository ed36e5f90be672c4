using System.Diagnostics; using System.Numerics;
using Lidoff.Numbers.Calculating; using Lidoff.Numbers.Quantities; using Lidoff.Numbers.Reals; using Lidoff.Numbers.Spreads;
var sw=Stopwatch.StartNew();
var c=new Bat();
Uncertain N(double v,double u)=>Uncertain.Normal(v,u);
Uncertain[] x=[N(0.4,0.02),N(0.9,0.02),N(3.7,0.05),N(5e-6,5e-7),N(8e-3,5e-4),N(3e-3,2e-4),N(10,1),N(25,3),N(0.02,0.002),N(0.9,0.01)];
var dd=x.Select(i=>i.Value).ToArray(); Console.WriteLine($"setup {sw.Elapsed.TotalMilliseconds:F1} jit {System.Runtime.JitInfo.GetCompilationTime().TotalMilliseconds:F1} ms {System.Runtime.JitInfo.GetCompiledMethodCount()} {System.Runtime.JitInfo.GetCompiledILBytes()} IL");
var o=c.Nominal(dd); Console.WriteLine($"nominal {sw.Elapsed.TotalMilliseconds:F1} jit {System.Runtime.JitInfo.GetCompilationTime().TotalMilliseconds:F1} ms {System.Runtime.JitInfo.GetCompiledMethodCount()} {System.Runtime.JitInfo.GetCompiledILBytes()} IL"); var sl=c.Slopes(dd); Console.WriteLine($"slopes {sw.Elapsed.TotalMilliseconds:F1}");
var e=new EightLanes(1); var bf=new double[2048]; e.Uniform(bf); Console.WriteLine($"uniform {sw.Elapsed.TotalMilliseconds:F1} jit {System.Runtime.JitInfo.GetCompilationTime().TotalMilliseconds:F1} ms {System.Runtime.JitInfo.GetCompiledMethodCount()} {System.Runtime.JitInfo.GetCompiledILBytes()} IL");
c.Run(x,samples:2048);  Console.WriteLine($"run 2048 {sw.Elapsed.TotalMilliseconds:F1} jit {System.Runtime.JitInfo.GetCompilationTime().TotalMilliseconds:F1} ms {System.Runtime.JitInfo.GetCompiledMethodCount()} {System.Runtime.JitInfo.GetCompiledILBytes()} IL");
var v=c.Run(x);
Console.WriteLine($"first use {sw.Elapsed.TotalMilliseconds:F1} ms; vector {Vector<double>.Count} {v.Value} {v.U} {v.FirstOrderU} {v.Mean} skipped {v.Skipped}");
foreach (var n in new[]{1,2}) { double best=1e9; for(int i=0;i<15;i++){ sw.Restart(); c.Run(x,threads:n); best=Math.Min(best,sw.Elapsed.TotalMilliseconds);} Console.WriteLine($"1e5 x 10 inputs, {n} thread(s): {best:F2} ms"); }
double bb=1e9; for(int i=0;i<3;i++){ sw.Restart(); c.Run(x,samples:1_000_000); bb=Math.Min(bb,sw.Elapsed.TotalMilliseconds);} Console.WriteLine($"1e6: {bb:F1} ms");
var d=new double[100_000]; var r=new Random(1); double bs=1e9; for(int i=0;i<5;i++){ for(int j=0;j<d.Length;j++) d[j]=r.NextDouble(); sw.Restart(); Array.Sort(d); bs=Math.Min(bs,sw.Elapsed.TotalMilliseconds);} Console.WriteLine($"sort 1e5 {bs:F2}");
var u=new double[2048]; var g=new EightLanes(1); bs=1e9; for(int i=0;i<200;i++){ sw.Restart(); g.Uniform(u); bs=Math.Min(bs,sw.Elapsed.TotalMicroseconds);} Console.WriteLine($"uniform 2048: {bs:F1} us");
public sealed class Bat : Calculation<Bat>, IFormula {
 public override CalculationInfo Info { get; } = new("bat","d",Units.Hour,[.. Enumerable.Range(0,10).Select(i=>new CalculationInput("i"+i,Units.One,-1e9,1e9,"x"))],"s",Maturity.Experimental,[]);
 public static T Evaluate<T>(ReadOnlySpan<T> x) where T: struct, IReal<T> {
  T cap=x[0]*3600.0*x[1]*T.Exp(-x[8]*2.0); T leak=x[3]*T.Exp((x[7]-25.0)/10.0*0.7); T on=x[4]*x[5]/x[6]; T log=T.Log(1.0+x[4]/x[3]);
  return cap/(leak/x[9]+on/x[9]+x[3]*T.Max(log,0.1))*x[2]/3.7/86400.0; } }
