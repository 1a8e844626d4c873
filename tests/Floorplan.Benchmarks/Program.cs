Console.WriteLine("to come");
