package gaugeglass.engine.toy;

import gaugeglass.engine.vocabulary.Item;
import gaugeglass.engine.vocabulary.Stage;

/** That a disc brake is fitted; reckoned, and there is none of it where none is. */
@Item(id = "disc.fitted", of = "bicycle", stage = Stage.ARRIVAL, ask = "Is a disc brake fitted?", structural = true)
public record DiscFitted(BrakeSort sort) {}
