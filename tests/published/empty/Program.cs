// What any program costs: start-up of the published program is measured against it.
Console.Write('.');
