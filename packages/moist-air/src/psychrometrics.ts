/// <reference path="./psychrolib.d.ts" />
import shared from 'psychrolib'

/**
 * The psychrometric functions in SI, on an object of our own: the unit switch of the library's shared object is global
 * to the process, so that whoever turned it to inch-pound would turn it here too, and we would turn it for them.
 */
export const psychrometrics = new shared.constructor()
psychrometrics.SetUnitSystem(psychrometrics.SI)
