using BridgeForm.Cli;

return Application.Run(args, Console.Out, Console.Error);
