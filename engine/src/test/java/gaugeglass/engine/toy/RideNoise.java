package gaugeglass.engine.toy;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Stage;

/** What is heard on a ride round the yard? */
@Item(id = "ride.noise", of = "bicycle", stage = Stage.HOT, ask = "What is heard on a ride round the yard?")
public record RideNoise(Noise noise) {}
