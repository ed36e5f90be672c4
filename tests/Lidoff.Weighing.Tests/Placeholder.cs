namespace Lidoff.Weighing.Tests;
