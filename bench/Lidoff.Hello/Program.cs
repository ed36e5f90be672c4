// The baseline of the cold-start benchmark: the smallest program that says something.
Console.WriteLine("Hello");
